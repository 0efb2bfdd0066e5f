package org.brakewright.analysis.mount;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;

/** Invented mounts on the car of which every number can be worked out by hand. */
public final class Mounts {
    private static final String SQUARE = """
            mount.panel.outline[0].across: -300 mm
            mount.panel.outline[0].up: -300 mm
            mount.panel.outline[1].across: 300 mm
            mount.panel.outline[1].up: -300 mm
            mount.panel.outline[2].across: 300 mm
            mount.panel.outline[2].up: 300 mm
            mount.panel.outline[3].across: -300 mm
            mount.panel.outline[3].up: 300 mm
            mount.panel.thickness: 1.5 mm
            mount.panel.material: mild_steel
            mount.panel.edges[0]: clamped
            mount.panel.edges[1]: clamped
            mount.panel.edges[2]: clamped
            mount.panel.edges[3]: clamped
            mount.panel.rake: 0 deg
            mount.pivot.forward: -60 mm
            mount.pivot.left: 0 mm
            mount.pivot.up: 60 mm
            mount.arm.profile.kind: flat_bar
            mount.arm.profile.width: 10 mm
            mount.arm.profile.height: 30 mm
            mount.arm.material: s235
            mount.arm.pad_offset: 0 mm
            """;

    /** Four bolts M8 on a square of 80 mm. */
    static final String BOLTS = """
            mount.brackets[0].bolts.diameter: 8 mm
            mount.brackets[0].bolts.pitch: 1.25 mm
            mount.brackets[0].bolts.grade: class_8_8
            mount.brackets[0].bolts.positions[0].across: -40 mm
            mount.brackets[0].bolts.positions[0].up: -40 mm
            mount.brackets[0].bolts.positions[1].across: 40 mm
            mount.brackets[0].bolts.positions[1].up: -40 mm
            mount.brackets[0].bolts.positions[2].across: 40 mm
            mount.brackets[0].bolts.positions[2].up: 40 mm
            mount.brackets[0].bolts.positions[3].across: -40 mm
            mount.brackets[0].bolts.positions[3].up: 40 mm
            mount.brackets[0].bolts.washer: 16 mm
            mount.brackets[0].bolts.clamped: 6 mm
            """;

    private static final String ONE_BRACKET = """
            mount.brackets[0].name: box
            mount.brackets[0].carries[0]: pivot
            mount.brackets[0].carries[1]: masters
            mount.brackets[0].side: driver
            """ + BOLTS;

    /** A clamped square of 600 mm under a bracket that carries pivot and masters; the hung pedal of {@link Cars#HUNG_PEDAL}. */
    public static final WrittenCar BOX = Cars.TWIN
            .without("pedal.ratio")
            .without("pedal.mount_stiffness")
            .without("pedal.arm_stiffness")
            .with(Cars.HUNG_PEDAL)
            .with(SQUARE + ONE_BRACKET);

    /** A doubler of 300 mm, laid on. */
    public static final String DOUBLER = """
            mount.doublers[0].name: doubler
            mount.doublers[0].outline[0].across: -150 mm
            mount.doublers[0].outline[0].up: -150 mm
            mount.doublers[0].outline[1].across: 150 mm
            mount.doublers[0].outline[1].up: -150 mm
            mount.doublers[0].outline[2].across: 150 mm
            mount.doublers[0].outline[2].up: 150 mm
            mount.doublers[0].outline[3].across: -150 mm
            mount.doublers[0].outline[3].up: 150 mm
            mount.doublers[0].thickness: 1.5 mm
            mount.doublers[0].material: mild_steel
            mount.doublers[0].joined: at_bolts
            """;

    /** A brace from the upper panel back to the cowl. */
    public static final String BRACE = """
            mount.stringers[0].name: brace
            mount.stringers[0].profile.kind: round_tube
            mount.stringers[0].profile.diameter: 20 mm
            mount.stringers[0].profile.wall: 1.5 mm
            mount.stringers[0].material: cds_tube
            mount.stringers[0].on_panel.across: 0 mm
            mount.stringers[0].on_panel.up: 90 mm
            mount.stringers[0].foot: 40 mm
            mount.stringers[0].body.forward: -350 mm
            mount.stringers[0].body.left: 0 mm
            mount.stringers[0].body.up: 300 mm
            mount.stringers[0].near_end: hinged
            mount.stringers[0].body_end: hinged
            """;

    private Mounts() {}
}
