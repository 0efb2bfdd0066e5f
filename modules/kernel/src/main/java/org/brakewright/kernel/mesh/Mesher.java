package org.brakewright.kernel.mesh;

import java.util.List;

/**
 * Cuts a panel into triangles: a Delaunay triangulation whose points are added where an edge is too long or an angle
 * too small, until none is. The same plan gives the same mesh.
 *
 * <p>Source: J. Ruppert, A Delaunay Refinement Algorithm for Quality 2-Dimensional Mesh Generation, J. Algorithms 18
 * (1995), from memory.
 */
public final class Mesher {
    /** Places nearer to one another than this are one place, m. */
    public static final double TOUCH = 1e-6;

    public static final int MOST_NODES = 20_000;

    /**
     * No angle is smaller, but where two sides or lines of the plan meet at less than {@link #SHARP}, rad: 25 degrees.
     */
    public static final double SMALLEST_ANGLE = Math.toRadians(25);

    /** Corners of the plan below this may leave smaller angles beside them, rad: 60 degrees. */
    public static final double SHARP = Math.toRadians(60);

    private Mesher() {}

    /** All that makes a plan no panel, without meshing it. */
    public static List<MeshFault> faults(PanelPlan plan) {
        return PlanCheck.faults(plan);
    }

    /** The mesh, or all that is wrong with the plan. */
    public static MeshOutcome mesh(PanelPlan plan, Fineness fineness) {
        List<MeshFault> faults = PlanCheck.faults(plan);
        if (!faults.isEmpty()) {
            return new MeshOutcome.Refused(faults);
        }
        Skeleton skeleton = Skeleton.of(plan);
        Inside inside = Inside.of(plan);
        Refinement refinement = new Refinement(plan.outline(), skeleton, inside, fineness);
        if (!refinement.run()) {
            Spot where = plan.outline().corners().getFirst();
            MeshFault fault =
                    new MeshFault(MeshFault.Kind.TOO_FINE, plan.outline().name(), "", where);
            return new MeshOutcome.Refused(List.of(fault));
        }
        return new MeshOutcome.Meshed(new Harvest(plan, inside, refinement.delaunay()).mesh());
    }
}
