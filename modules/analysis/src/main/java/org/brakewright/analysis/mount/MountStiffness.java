package org.brakewright.analysis.mount;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakewright.kernel.structure.Axes;
import org.brakewright.kernel.structure.Beam;
import org.brakewright.kernel.structure.BeamEnd;
import org.brakewright.kernel.structure.BeamProperty;
import org.brakewright.kernel.structure.Freedom;
import org.brakewright.kernel.structure.Load;
import org.brakewright.kernel.structure.LoadCase;
import org.brakewright.kernel.structure.Solve;
import org.brakewright.kernel.structure.Spring;
import org.brakewright.kernel.structure.SpringRate;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.StructureOutcome;
import org.brakewright.kernel.structure.Support;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** How far a mount and a pedal's arm give way at the pad, fluid held fast. */
public final class MountStiffness {
    /** Of a rod that gives nothing beside the arm, N/m. */
    private static final double STIFF = 1e14;

    private MountStiffness() {}

    /** How it ended. */
    public sealed interface Outcome {
        /** Foot force over pad movement, N/m. */
        record Stands(double stiffness) implements Outcome {}

        /** Path of the part that can move without resistance, and of those that move along. */
        record Loose(String part, List<String> along) implements Outcome {}
    }

    /**
     * Foot force over pad movement through panel, brackets and bars, without the arm.
     *
     * @param ratio of the pedal, which moves the pin along its arm where another one is drawn
     */
    public static Outcome of(ResolvedMount mount, double ratio) {
        return of(mount.structure(), mount.pedal(), ratio);
    }

    static Outcome of(Structure structure, PedalPoints points, double ratio) {
        return switch (Settling.of(structure)) {
            case Settled.Firm firm ->
                new Outcome.Stands(
                        1 / firm.give(structure, PedalForces.of(points).withRatio(ratio)));
            case Settled.Loose(String part, List<String> along) -> new Outcome.Loose(part, along);
            case Settled.Unmeshed(String path) -> new Outcome.Loose(path, List.of());
        };
    }

    /** The ratio of a pedal as it is drawn, thrust over foot force. */
    public static double drawnRatio(PedalPoints points) {
        return PedalForces.of(points).ratio();
    }

    /** Foot force over pad movement by bending of the arm, pivot and rod held fast, N/m; empty when it cannot stand. */
    public static Optional<Double> arm(PedalPoints points) {
        PedalForces forces = PedalForces.of(points);
        StructureModel.Builder model = StructureModel.builder();
        int pivot = node(model, forces.pivot());
        int pin = node(model, forces.pin());
        int pad = node(model, forces.pad());
        BeamProperty property = Profiles.property(points.profile(), points.material());
        model.add(beam(
                BeamEnd.releasing(pivot, Set.of(Freedom.TURN_Y)),
                pin,
                forces.pin().minus(forces.pivot()),
                property));
        model.add(beam(BeamEnd.fixed(pin), pad, forces.pad().minus(forces.pin()), property));
        model.support(new Support(pivot, Support.CLAMP));
        Axes rod = Axes.along(forces.rod(), Profiles.up(forces.rod()));
        model.add(new Spring("mount.rod", pin, Spring.GROUND, rod, SpringRate.axial(STIFF)));
        LoadCase push = LoadCase.of("push", new Load.OnNode(pad, Wrench.ofForce(forces.foot())));
        return Solve.solve(model.build(), List.of(push)) instanceof StructureOutcome.Solved solved
                ? Optional.of(1 / solved.cases().getFirst().motion(pad).shift().dot(forces.foot()))
                : Optional.empty();
    }

    private static int node(StructureModel.Builder model, Vector3 at) {
        return model.node(at.x(), at.y(), at.z());
    }

    private static Beam beam(BeamEnd start, int end, Vector3 along, BeamProperty property) {
        return new Beam("mount.arm", start, BeamEnd.fixed(end), Profiles.up(along), property);
    }
}
