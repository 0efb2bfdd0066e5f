package org.brakewright.analysis.mount;

import org.brakewright.kernel.structure.Axes;
import org.brakewright.kernel.structure.BeamProperty;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.section.OpenSections;
import org.brakewright.kernel.structure.section.Section;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.model.resolved.ResolvedMount.Material;
import org.brakewright.model.resolved.ResolvedMount.Profile;

/** Sections of bars, and how they stand in the car. */
final class Profiles {
    /** A bar is taken as standing when it leans less than this off plumb, as the sine. */
    private static final double STANDING = 0.7;

    private Profiles() {}

    static Section section(Profile profile) {
        double width = profile.width();
        double height = profile.height();
        double wall = profile.wall();
        return switch (profile.shape()) {
            case ROUND_TUBE -> Sections.roundTube(width, wall);
            case ROUND_BAR -> Sections.roundBar(width);
            case RECTANGULAR_TUBE -> Sections.rectangularTube(width, height, wall);
            case FLAT_BAR -> Sections.flat(width, height);
            case ANGLE -> OpenSections.angle(width, height, wall);
            case CHANNEL -> OpenSections.channel(width, height, wall);
        };
    }

    static BeamProperty property(Profile profile, Material material) {
        return new BeamProperty(section(profile), material.young(), material.young() / (2 * (1 + material.poisson())));
    }

    /** The direction in which a section's height lies: up, or forward on a bar that stands. */
    static Vector3 up(Vector3 along) {
        boolean stands = Math.abs(along.z()) > STANDING * along.length();
        return stands ? Axes.OF_STRUCTURE.x() : Axes.OF_STRUCTURE.z();
    }
}
