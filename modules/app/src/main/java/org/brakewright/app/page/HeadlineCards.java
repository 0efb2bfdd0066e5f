package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;

/** Effort, travel, balance and margin, always together. */
final class HeadlineCards {
    private final Show show;

    HeadlineCards(Show show) {
        this.show = show;
    }

    List<PageView.Card> of(Assessment assessment) {
        List<PageView.Card> cards = new ArrayList<>();
        HardStop stop = assessment.analysis().hardStop();
        String at = "hard stop of " + g(assessment.resolved().aims().hardStopG());
        if (stop == null) {
            cards.add(card(assessment, "effort", "Pedal effort", "none gives it", at, "pedal_effort"));
            cards.add(card(assessment, "travel", "Pedal travel", "not known", at, "pedal_effort"));
            cards.add(card(assessment, "balance", "Front share", "not known", at, "pedal_effort"));
        } else {
            stopCards(assessment, stop, at, cards);
        }
        cards.add(margin(assessment));
        return List.copyOf(cards);
    }

    private void stopCards(Assessment assessment, HardStop stop, String at, List<PageView.Card> cards) {
        cards.add(card(
                assessment,
                "effort",
                "Pedal effort",
                show.value(stop.point().pedalForceN(), Dimension.FORCE),
                at + "; aim " + show.value(assessment.resolved().aims().mostEffort(), Dimension.FORCE),
                "pedal_effort"));
        cards.add(card(
                assessment,
                "travel",
                "Pedal travel",
                show.value(stop.point().pedalTravelM(), Dimension.LENGTH),
                "aim " + show.value(assessment.resolved().aims().mostTravel(), Dimension.LENGTH) + ", "
                        + show.percent(stop.reserveShare()) + " of the travel left",
                "pedal_travel",
                "pedal_reserve",
                "master_stroke"));
        cards.add(card(
                assessment,
                "balance",
                "Front share",
                show.percent(stop.frontShare()),
                "ideal " + show.percent(stop.idealFrontShare()) + " at "
                        + g(stop.point().decelerationG()),
                "front_share",
                "bar_range"));
    }

    private PageView.Card margin(Assessment assessment) {
        Double critical = assessment.headline().criticalDecelerationG();
        String value = critical == null ? "never" : critical <= 0 ? "always" : "above " + g(critical);
        return card(
                assessment,
                "margin",
                "Rear locks first",
                value,
                "tyre grip " + show.number(assessment.analysis().grip()),
                "rear_locks_first");
    }

    private static PageView.Card card(
            Assessment assessment, String key, String label, String value, String note, String... rules) {
        return new PageView.Card(key, label, value, note, FindingWords.key(worst(assessment, rules)), key);
    }

    private static State worst(Assessment assessment, String... rules) {
        return assessment.findings().stream()
                .filter(finding -> List.of(rules).contains(finding.key()))
                .map(Finding::state)
                .min(State::compareTo)
                .orElse(State.FINE);
    }

    private String g(double decelerationG) {
        return show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
