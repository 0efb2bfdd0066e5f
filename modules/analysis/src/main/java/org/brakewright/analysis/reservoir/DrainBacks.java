package org.brakewright.analysis.reservoir;

import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.brake.AxleBrake;
import org.brakewright.kernel.hydraulics.Head;
import org.brakewright.kernel.hydraulics.ResidualValve;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.vehicle.AxleEnd;

/** Whether fluid stays in the lines at rest, and what a residual valve costs in drag. */
public final class DrainBacks {
    /** Upper end of brake fluids, kg/m3 (1,020 to 1,070, from memory): the heavier fluid drains harder. */
    public static final double DENSITY = 1070;

    private DrainBacks() {}

    /** Front and rear line of a build. */
    public static List<DrainBack> of(ResolvedBuild build) {
        return List.of(
                line(AxleEnd.FRONT, build.front(), build.car().frontTyreRadius(), build.frontCircuit()),
                line(AxleEnd.REAR, build.rear(), build.car().rearTyreRadius(), build.rearCircuit()));
    }

    private static DrainBack line(AxleEnd axle, ResolvedBrake brake, double tyreRadius, ResolvedCircuit circuit) {
        double kept = circuit.residualPressure().orElse(0);
        OptionalDouble level = circuit.reservoir().levelAboveBrakes();
        double drag = AxleBrake.of(brake, tyreRadius).force(kept);
        if (level.isEmpty()) {
            return new DrainBack(axle, null, kept, null, brake.thresholdPressure(), drag);
        }
        double head = Head.pressure(Math.max(0, -level.getAsDouble()), DENSITY);
        boolean holds = new ResidualValve(kept).holds(head);
        return new DrainBack(axle, head, kept, holds, brake.thresholdPressure(), drag);
    }
}
