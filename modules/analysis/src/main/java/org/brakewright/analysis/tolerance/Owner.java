package org.brakewright.analysis.tolerance;

/**
 * An input with what it owns of a result's variance by itself.
 *
 * @param path key path in the build file
 * @param title plain name
 * @param share 0 to 1
 */
public record Owner(String path, String title, double share) {
    /** Less than this is not told, whatever the number of samples. */
    static final double LEAST = 0.01;

    /** So many are told one by one. */
    static final int MOST = 12;
}
