package org.brakewright.kernel.structure;

import org.brakewright.kernel.structure.section.Section;

/**
 * What a beam is made of.
 *
 * @param young modulus, Pa
 * @param shear modulus, Pa
 */
public record BeamProperty(Section section, double young, double shear) {
    public BeamProperty {
        Require.positive("young", young);
        Require.positive("shear", shear);
    }
}
