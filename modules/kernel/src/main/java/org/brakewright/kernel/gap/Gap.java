package org.brakewright.kernel.gap;

/**
 * How far two bodies lie apart.
 *
 * @param clearance least distance, m; negative when they overlap, then by how much at least they would have to part,
 *     exactly so while only their roundings overlap
 * @param first the point of the first body nearest to the second, m
 * @param second the point of the second body nearest to the first, m
 * @param bound by how much the true distance may lie below {@code clearance} as found, m; it never lies above beyond
 *     rounding
 */
public record Gap(double clearance, Point first, Point second, double bound) {
    /** Whether they touch or overlap. */
    public boolean touching() {
        return clearance <= 0;
    }
}
