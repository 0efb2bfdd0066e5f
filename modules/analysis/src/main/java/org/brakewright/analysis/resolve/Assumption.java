package org.brakewright.analysis.resolve;

import org.brakewright.model.Tag;
import org.brakewright.quantity.Dimension;

/**
 * One value that nobody measured.
 *
 * @param path key path in the build file
 * @param title plain name
 * @param dimension kind of quantity
 * @param value used, SI
 * @param low lower end of the range, SI
 * @param high upper end, SI
 * @param basis why this value and range
 * @param tag how well it is known
 * @param byBuilder true when the builder wrote the value and called it assumed
 */
public record Assumption(
        String path,
        String title,
        Dimension dimension,
        double value,
        double low,
        double high,
        String basis,
        Tag tag,
        boolean byBuilder) {}
