package org.brakewright.kernel.fastener;

/**
 * A bolt that bears sideways on the sheet it passes through: the sheet is crushed behind it, or torn out to the edge.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-11. The tear runs along two lines from the
 * hole's rim, not from its centre, which is the safe side.
 *
 * @param bolt diameter, m
 * @param hole diameter, m
 * @param thickness of the sheet, m
 * @param edge from the hole's centre to the edge that the bolt pushes toward, m
 */
public record BoltHole(double bolt, double hole, double thickness, double edge) {
    public BoltHole {
        Require.positive("bolt", bolt);
        Require.that(hole >= bolt && Double.isFinite(hole), "hole", hole, "must be finite and not below the bolt");
        Require.positive("thickness", thickness);
        Require.that(edge > hole / 2 && Double.isFinite(edge), "edge", edge, "must lie beyond the rim of the hole");
    }

    /**
     * Stress between bolt and sheet, Pa.
     *
     * @param shear force of the bolt on this sheet, N
     */
    public double bearing(double shear) {
        return Math.abs(shear) / (bolt * thickness);
    }

    /** Shear stress along the tear to the edge, Pa. */
    public double tearOut(double shear) {
        return Math.abs(shear) / (2 * thickness * (edge - hole / 2));
    }
}
