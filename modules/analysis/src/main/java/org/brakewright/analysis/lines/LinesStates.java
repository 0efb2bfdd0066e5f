package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.brakewright.analysis.chain.PanicPush;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.PlateState;
import org.brakewright.analysis.lines.LinesState.HoseState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.analysis.lines.LinesState.PartState;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.NutThread;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Hose;
import org.brakewright.model.resolved.ResolvedLines.Part;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedLines.Tube;
import org.jspecify.annotations.Nullable;

/** Works out the lines of a car. */
public final class LinesStates {
    /** Air that has to be pushed down less goes with the fluid; common practice, no source, m. */
    private static final double LEAST_RISE = 10e-3;

    private final ResolvedLines lines;
    private final LineGraph graph;
    private final Highest highest;

    private LinesStates(ResolvedLines lines, Highest highest) {
        this.lines = lines;
        this.graph = new LineGraph(lines);
        this.highest = highest;
    }

    /** Highest pressures (Pa) of the circuits; 0 where there is none. */
    public record Highest(double front, double rear, double clutch) {
        /** Of a frightened leg and of the clutch through its stroke. */
        public static Highest of(PanicPush push, @Nullable ClutchState clutch) {
            double released = clutch == null
                    ? 0
                    : Stream.of(clutch.newPlate(), clutch.wornPlate())
                            .flatMap(plate -> plate.curve().stream())
                            .mapToDouble(PlateState.CurvePoint::pressurePa)
                            .max()
                            .orElse(0);
            return new Highest(push.frontPressurePa(), push.rearPressurePa(), released);
        }

        double of(Circuit circuit) {
            return switch (circuit) {
                case FRONT -> front;
                case REAR -> rear;
                case CLUTCH -> clutch;
            };
        }
    }

    /** The lines of a build; null when none are told. */
    public static @Nullable LinesState of(ResolvedBuild build, Highest highest) {
        return build.lines()
                .map(lines -> new LinesStates(lines, highest).state(build.apply() instanceof ResolvedApply.Twin))
                .orElse(null);
    }

    private LinesState state(boolean bar) {
        TubeStates tubes = new TubeStates(lines);
        List<TubeState> bent = lines.tubes().stream()
                .map(tube -> tubes.state(tube, circuit(tube.start()), highest.of(circuit(tube.start()))))
                .toList();
        List<PartState> parts = lines.parts().stream().map(this::part).toList();
        return new LinesState(
                bent,
                joints(),
                lines.hoses().stream().map(this::hose).toList(),
                CutPlans.of(lines, bent),
                parts,
                AirTraps.of(lines, LEAST_RISE),
                BleedOrder.of(parts, bar));
    }

    private Circuit circuit(LineEnd end) {
        return fed(end.to()).circuit();
    }

    private LineGraph.Fed fed(String part) {
        LineGraph.Fed fed = graph.fed(part);
        if (fed == null) {
            throw new IllegalArgumentException("a resolved part is fed by a master: " + part);
        }
        return fed;
    }

    private PartState part(Part part) {
        LineGraph.Fed fed = fed(part.name());
        return new PartState(part.name(), part.kind(), fed.circuit(), fed.way(), part.at(), part.bleeder());
    }

    private HoseState hose(Hose hose) {
        return new HoseState(
                hose.name(),
                circuit(hose.start()),
                hose.length(),
                at(hose.start()).to(at(hose.end())));
    }

    private Spot at(LineEnd end) {
        return lines.parts().stream()
                .filter(part -> part.name().equals(end.to()))
                .findFirst()
                .orElseThrow()
                .at();
    }

    private List<JointState> joints() {
        List<JointState> joints = new ArrayList<>();
        for (Tube tube : lines.tubes()) {
            joints.add(joint(tube.name(), true, tube.start(), JointRules.ofTube(tube, tube.start())));
            joints.add(joint(tube.name(), false, tube.end(), JointRules.ofTube(tube, tube.end())));
        }
        for (Hose hose : lines.hoses()) {
            joints.add(joint(hose.name(), true, hose.start(), JointRules.ofEnd(hose.start())));
            joints.add(joint(hose.name(), false, hose.end(), JointRules.ofEnd(hose.end())));
        }
        return List.copyOf(joints);
    }

    private static JointState joint(String line, boolean start, LineEnd end, Set<Misfit> misfits) {
        return new JointState(
                line,
                start,
                end.to(),
                key(end.form()),
                thread(end.nut(), "none"),
                key(end.seat()),
                thread(end.portThread(), "not told"),
                List.copyOf(misfits));
    }

    private static String thread(@Nullable NutThread thread, String without) {
        return thread == null ? without : key(thread);
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
