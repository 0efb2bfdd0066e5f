package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.quantity.Dimension;

/** Deceleration left with a circuit or the booster failed, against the strictest rule the builder answers to. */
public final class FailedCircuit implements Rule {
    private static final Limit UN =
            limit(2.44, "UN R13-H Annex 3, secondary braking at no more than 500 N", Tag.FROM_MEMORY);
    private static final Limit FMVSS = limit(2.44, "FMVSS 135 S7.10 and S7.11, at no more than 500 N", Tag.FROM_MEMORY);
    private static final Limit STATE = limit(2.55, "NSW brake assessment manual 2013, p. 38", Tag.VERIFIED);
    private static final Limit STATE_BOOSTER = limit(
            0.5 * Gravity.STANDARD, "NSW brake assessment manual 2013, p. 25, half the weight at 500 N", Tag.VERIFIED);

    /** A car that answers to no rule is held against a figure that was read in the text, not against a recalled one. */
    private static final Limit NONE =
            limit(2.55, "no rule set chosen; NSW brake assessment manual 2013, p. 38, as a yardstick", Tag.VERIFIED);

    @Override
    public String key() {
        return "failed_circuit";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().failures().stream()
                .map(failure -> judge(failure, strictest(facts, failure)))
                .toList();
    }

    private Finding judge(Failure failure, Limit limit) {
        Figure found = Figure.g(failure.decelerationG());
        return Judged.as(state(failure, found, limit), this)
                .about(failure.what().name().toLowerCase(Locale.ROOT))
                .found(found)
                .against(limit.figure(), limit.whose(), limit.tag())
                .with("push", Figure.force(failure.pedalForceN()))
                .with("travel", Figure.length(failure.pedalTravelM()))
                .with("fall", Figure.length(failure.pedalFallM()))
                .saying(variant(failure))
                .inputs("pedal.ratio", "pedal.travel_to_stop", "apply.balance_bar.tilt_limit")
                .finding();
    }

    private static State state(Failure failure, Figure found, Limit limit) {
        if (found.value() < limit.figure().value()) {
            return State.STOP;
        }
        if (failure.bar() == Failure.BarEnd.BINDS_AT_TILT_LIMIT || failure.reachesStop()) {
            return State.CAUTION;
        }
        return Standing.whenMet(limit.tag());
    }

    private static String variant(Failure failure) {
        if (failure.reachesStop()) {
            return "at_stop";
        }
        if (failure.what() == Failure.What.BOOSTER) {
            return "booster";
        }
        return failure.bar() == Failure.BarEnd.BINDS_AT_TILT_LIMIT ? "binds" : "";
    }

    private static Limit strictest(Facts facts, Failure failure) {
        List<Limit> limits = new ArrayList<>();
        if (facts.answersTo(RuleSet.STATE_ASSESSMENT)) {
            limits.add(failure.what() == Failure.What.BOOSTER ? STATE_BOOSTER : STATE);
        }
        if (facts.answersTo(RuleSet.UN_R13H)) {
            limits.add(UN);
        }
        if (facts.answersTo(RuleSet.FMVSS_135)) {
            limits.add(FMVSS);
        }
        return limits.isEmpty() ? NONE : limits.getFirst();
    }

    private static Limit limit(double metrePerSecondSquared, String whose, Tag tag) {
        return new Limit(new Figure(metrePerSecondSquared, Dimension.ACCELERATION), whose, tag);
    }
}
