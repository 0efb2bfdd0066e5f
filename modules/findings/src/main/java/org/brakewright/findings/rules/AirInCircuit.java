package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/**
 * What air in one circuit leaves, held against what is asked with that circuit failed: no rule names air itself, so less
 * than that is a caution and no more. Of circuits that cannot be told, the one with the least left speaks for all: they
 * are held against the same remembered limit.
 */
public final class AirInCircuit implements Rule {
    @Override
    public String key() {
        return "air_in_circuit";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<Finding> all = facts.analysis().weakened().stream()
                .filter(failure -> failure.what() != What.FADE)
                .sorted(Comparator.comparingDouble(Failure::decelerationG))
                .map(failure -> judge(facts, failure))
                .toList();
        Stream<Finding> undecided =
                all.stream().filter(each -> each.state() == State.CANNOT_TELL).limit(1);
        return Stream.concat(all.stream().filter(each -> each.state() != State.CANNOT_TELL), undecided)
                .toList();
    }

    private Finding judge(Facts facts, Failure failure) {
        Limit limit = SecondaryLimits.strictest(facts, failure.what());
        boolean below =
                Figure.g(failure.decelerationG()).value() < limit.figure().value();
        State state = below || failure.reachesStop() ? State.CAUTION : Standing.whenMet(limit.tag());
        return Judged.as(state, this)
                .about(failure.what().name().toLowerCase(Locale.ROOT).replaceFirst("air_in_", ""))
                .saying(variant(failure, below))
                .found(Figure.g(failure.decelerationG()))
                .against(limit.figure(), "as with that circuit failed: " + limit.whose(), limit.tag())
                .with("air", Figure.ratio(facts.aims().airInOneCircuit()))
                .with("push", Figure.force(failure.pedalForceN()))
                .with("travel", Figure.length(failure.pedalTravelM()))
                .with("fall", Figure.length(failure.pedalFallM()))
                .inputs("intent.air_in_one_circuit", "pedal.travel_to_stop", "lines.front.trapped_volume")
                .finding();
    }

    private static String variant(Failure failure, boolean below) {
        if (failure.reachesStop()) {
            return below ? "at_stop_below" : "at_stop";
        }
        return failure.bottomed() && !below ? "bottoms" : "";
    }
}
