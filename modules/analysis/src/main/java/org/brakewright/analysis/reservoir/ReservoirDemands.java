package org.brakewright.analysis.reservoir;

import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.reservoir.ReservoirDemand.Circuit;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.jspecify.annotations.Nullable;

/**
 * Fluid that wearing linings take from the reservoirs: the pistons of all wheels move by wear and running clearance.
 *
 * <p>The disc's own wear and what parts give under pressure are not counted.
 */
public final class ReservoirDemands {
    private static final int WHEELS = 2;

    private ReservoirDemands() {}

    /** Both circuits of a build. */
    public static List<ReservoirDemand> of(ResolvedBuild build) {
        OptionalDouble front = worn(build.front());
        OptionalDouble rear = worn(build.rear());
        if (build.apply().diagonal()) {
            OptionalDouble halves = front.isPresent() && rear.isPresent()
                    ? OptionalDouble.of((front.getAsDouble() + rear.getAsDouble()) / 2)
                    : OptionalDouble.empty();
            return circuits(build, new Worn(Circuit.FIRST_DIAGONAL, halves), new Worn(Circuit.SECOND_DIAGONAL, halves));
        }
        return circuits(build, new Worn(Circuit.FRONT_CIRCUIT, front), new Worn(Circuit.REAR_CIRCUIT, rear));
    }

    private record Worn(Circuit circuit, OptionalDouble taken) {
        ReservoirDemand from(ResolvedCircuit line, double stroke) {
            return new ReservoirDemand(circuit, orNull(line.reservoir().volume()), orNull(taken), stroke);
        }
    }

    private static List<ReservoirDemand> circuits(ResolvedBuild build, Worn front, Worn rear) {
        ResolvedApply apply = build.apply();
        Master inFront = switch (apply) {
            case ResolvedApply.Twin twin -> twin.front();
            case ResolvedApply.Tandem tandem -> tandem.master();
        };
        Master behind = switch (apply) {
            case ResolvedApply.Twin twin -> twin.rear();
            case ResolvedApply.Tandem tandem -> tandem.master();
        };
        return List.of(
                front.from(build.frontCircuit(), inFront.area() * Strokes.front(apply)),
                rear.from(build.rearCircuit(), behind.area() * Strokes.rear(apply)));
    }

    /** What both wheels of an axle take, m3; empty when not known how far the linings may wear. */
    private static OptionalDouble worn(ResolvedBrake brake) {
        return switch (brake) {
            case ResolvedBrake.Disc disc ->
                times(WHEELS * 2 * disc.pistonArea(), disc.padWear(), disc.runningClearance());
            case ResolvedBrake.Drum drum ->
                times(WHEELS * 2 * drum.wheelCylinderArea(), drum.shoeWear(), drum.shoeMovement());
        };
    }

    private static OptionalDouble times(double area, OptionalDouble wear, double clearance) {
        return wear.isPresent() ? OptionalDouble.of(area * (wear.getAsDouble() + clearance)) : wear;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
