package org.brakewright.kernel.mesh;

import java.util.List;

/**
 * A flat panel to be cut into triangles. Names tell points, lines and rings apart, in results and faults.
 *
 * @param holes inside the outline, apart from it and from each other
 * @param points inside or on the rim
 * @param lines inside or on the rim; they may cross and touch
 * @param regions doublers: whole inside the outline, may overlap, holes go through them
 */
public record PanelPlan(
        Ring outline, List<Ring> holes, List<MustPoint> points, List<MustLine> lines, List<Ring> regions) {
    public PanelPlan {
        holes = List.copyOf(holes);
        points = List.copyOf(points);
        lines = List.copyOf(lines);
        regions = List.copyOf(regions);
    }

    /** Nothing but the outline. */
    public static PanelPlan bare(Ring outline) {
        return new PanelPlan(outline, List.of(), List.of(), List.of(), List.of());
    }
}
