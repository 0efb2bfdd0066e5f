package org.brakewright.findings.rules;

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

/** Deceleration left with a circuit or the booster failed, against the strictest rule the builder answers to. */
public final class FailedCircuit implements Rule {
    @Override
    public String key() {
        return "failed_circuit";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().failures().stream()
                .map(failure -> judge(failure, SecondaryLimits.strictest(facts, failure.what())))
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
}
