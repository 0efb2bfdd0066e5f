package org.brakewright.findings.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.brakewright.analysis.stop.Stop;
import org.brakewright.analysis.stop.Stop.Comparison;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Whether stops followed over time, with wheels that slip and lock, lock in the order that the steady reckoning names. */
public final class StopOverTime implements Rule {
    @Override
    public String key() {
        return "stop_over_time";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<Stop> stops = facts.analysis().stops();
        if (stops.isEmpty()) {
            return List.of();
        }
        Optional<Stop> endless = first(stops, stop -> stop.ending() != Stop.Ending.AT_REST);
        if (endless.isPresent()) {
            return List.of(about(endless.get()).saying("no_rest").finding());
        }
        Optional<Stop> differing = first(stops, stop -> stop.comparison() == Comparison.DIFFERS);
        return List.of(differing.isPresent() ? about(differing.get()).finding() : agreeing(stops));
    }

    private Finding agreeing(List<Stop> stops) {
        int close = stops.stream()
                .mapToInt(stop -> stop.comparison() == Comparison.TOO_CLOSE ? 1 : 0)
                .sum();
        Judged judged = Judged.as(State.FINE, this)
                .with("count", Figure.ratio(stops.size()))
                .with("close", Figure.ratio(close))
                .with("same", Figure.ratio(stops.size() - close))
                .with("speed", Figure.speed(stops.getFirst().speedMS()));
        return (close == 0 ? judged : judged.saying("close")).finding();
    }

    private Judged about(Stop stop) {
        return Judged.as(State.CAUTION, this)
                .about(stop.kind().words() + ", loaded as \"" + stop.loadCase() + "\"")
                .with("speed", Figure.speed(stop.speedMS()))
                .inputs("stops.rise", "stops.peak_slip", "stops.slippery_grip");
    }

    private static Optional<Stop> first(List<Stop> stops, Predicate<Stop> which) {
        return stops.stream().filter(which).findFirst();
    }
}
