package org.brakewright.findings.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.analysis.reservoir.DrainBack;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.vehicle.AxleEnd;

/** Whether each line keeps its fluid at rest, drum cups their seal, and pads their freedom. */
public final class ResidualValve implements Rule {
    /** Between the valves of 2 and of 10 psi, about 5 psi: no valve for drums keeps less, none for discs more, Pa. */
    private static final double BETWEEN = 0.35e5;

    @Override
    public String key() {
        return "residual_valve";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().drainBack().stream()
                .flatMap(line -> judge(facts, line).stream())
                .toList();
    }

    private Optional<Finding> judge(Facts facts, DrainBack line) {
        ResolvedBrake brake = line.axle() == AxleEnd.FRONT
                ? facts.build().front()
                : facts.build().rear();
        return Stream.of(drags(line, brake), drains(line), ofKind(line, brake))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Finding> drags(DrainBack line, ResolvedBrake brake) {
        double kept = line.residualPressurePa();
        boolean tooMuch = brake instanceof ResolvedBrake.Disc && kept > BETWEEN;
        if (!tooMuch && line.dragForceN() <= 0) {
            return Optional.empty();
        }
        Judged judged = as(State.CAUTION, "drags", line).with("drag", Figure.force(line.dragForceN()));
        return Optional.of(
                tooMuch
                        ? between(judged).finding()
                        : judged.against(
                                        Figure.pressure(line.thresholdPa()),
                                        "pressure at which these brakes begin to give torque",
                                        Tag.DERIVED)
                                .finding());
    }

    private Optional<Finding> drains(DrainBack line) {
        Double head = line.headPa();
        if (head == null || Boolean.TRUE.equals(line.holds())) {
            return Optional.empty();
        }
        return Optional.of(as(State.CAUTION, "drains", line)
                .against(Figure.pressure(head), "head of the fluid between bleeder and reservoir", Tag.DERIVED)
                .finding());
    }

    private Optional<Finding> ofKind(DrainBack line, ResolvedBrake brake) {
        return switch (brake) {
            case ResolvedBrake.Disc disc -> disc(line);
            case ResolvedBrake.Drum drum -> Optional.of(drum(line, drum));
        };
    }

    private Optional<Finding> disc(DrainBack line) {
        if (line.headPa() != null) {
            return Optional.of(as(State.FINE, "", line).finding());
        }
        return line.residualPressurePa() > 0
                ? Optional.of(as(State.CANNOT_TELL, "level", line).finding())
                : Optional.empty();
    }

    private Finding drum(DrainBack line, ResolvedBrake.Drum drum) {
        if (drum.cupExpanders().orElse(false)) {
            return as(State.FINE, "expanders", line).finding();
        }
        if (line.residualPressurePa() >= BETWEEN) {
            return between(as(State.FINE, "cups", line)).finding();
        }
        return between(as(drum.cupExpanders().isEmpty() ? State.CANNOT_TELL : State.CAUTION, "cups", line))
                .finding();
    }

    private static Judged between(Judged judged) {
        return judged.against(
                Figure.pressure(BETWEEN),
                "between valves for discs (2 psi) and valves for drums (10 psi)",
                Tag.COMMON_PRACTICE);
    }

    private Judged as(State state, String variant, DrainBack line) {
        String end = line.axle().name().toLowerCase(Locale.ROOT);
        return Judged.as(state, this)
                .about(end)
                .saying(variant)
                .found(Figure.pressure(line.residualPressurePa()))
                .inputs(
                        "lines." + end + ".residual_valve",
                        "lines." + end + ".level_above_brakes",
                        end + ".cup_expanders");
    }
}
