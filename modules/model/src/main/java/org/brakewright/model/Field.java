package org.brakewright.model;

import org.brakewright.quantity.Dimension;

/**
 * One quantity that the build file can hold.
 *
 * @param pattern key path with {@code []} for any index, for example {@code car.load_cases[].cg_height}
 * @param section plain name of the section it stands in, empty at the top
 * @param label plain name
 * @param dimension kind of quantity
 * @param least smallest value allowed, SI
 * @param most largest value allowed, SI
 * @param why why values outside are refused, a clause that follows "because"
 * @param how how to find it on the car, empty when the label says it
 */
public record Field(
        String pattern,
        String section,
        String label,
        Dimension dimension,
        double least,
        double most,
        String why,
        String how) {

    /** Section and label together: "front brakes: pad friction". */
    public String title() {
        return section.isEmpty() ? label : section + ": " + label;
    }
}
