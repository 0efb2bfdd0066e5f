package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;

/** Effort, travel, balance and margin, always together, and the clutch where there is one. */
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
            State state = worst(assessment, "pedal_effort");
            cards.add(unopened(state, "effort", "Pedal effort", "beyond any push", at));
            cards.add(unopened(state, "travel", "Pedal travel", "not known", at));
            cards.add(unopened(state, "balance", "Front share", "not known", at));
        } else {
            stopCards(assessment, stop, at, cards);
        }
        cards.add(margin(assessment));
        ClutchState clutch = assessment.analysis().clutch();
        if (clutch != null) {
            cards.add(clutch(assessment, clutch));
        }
        return List.copyOf(cards);
    }

    private void stopCards(Assessment assessment, HardStop stop, String at, List<PageView.Card> cards) {
        cards.add(card(
                worst(assessment, "pedal_effort"),
                "effort",
                "Pedal effort",
                show.value(stop.point().pedalForceN(), Dimension.FORCE),
                at + "; aim " + show.value(assessment.resolved().aims().mostEffort(), Dimension.FORCE)));
        cards.add(card(
                worst(assessment, "pedal_travel", "pedal_reserve", "master_stroke"),
                "travel",
                "Pedal travel",
                show.value(stop.point().pedalTravelM(), Dimension.LENGTH),
                "aim " + show.value(assessment.resolved().aims().mostTravel(), Dimension.LENGTH) + ", "
                        + show.percent(stop.reserveShare()) + " of the travel left"));
        cards.add(card(
                worst(assessment, "front_share", "bar_range"),
                "balance",
                "Front share",
                show.percent(stop.frontShare()),
                "ideal " + show.percent(stop.idealFrontShare()) + " at "
                        + g(stop.point().decelerationG())));
    }

    private PageView.Card margin(Assessment assessment) {
        Double critical = assessment.headline().criticalDecelerationG();
        State state = worst(assessment, "rear_locks_first");
        String label = "Rear locks first";
        String grip = "tyre grip " + show.number(assessment.analysis().grip());
        if (critical == null || critical <= 0) {
            return unopened(state, "margin", label, critical == null ? "never" : "always", grip);
        }
        return card(state, "margin", label, "above " + g(critical), grip);
    }

    private PageView.Card clutch(Assessment assessment, ClutchState clutch) {
        State state = assessment.findings().stream()
                .filter(finding -> finding.key().startsWith("clutch_"))
                .map(Finding::state)
                .min(State::compareTo)
                .orElse(State.FINE);
        return new PageView.Card(
                "clutch",
                "Clutch pedal effort",
                show.value(clutch.heaviest().mostEffortN(), Dimension.FORCE),
                new ClutchPanel(show).told(assessment),
                FindingWords.key(state),
                "clutch_effort");
    }

    /** A number that a working opens. */
    private static PageView.Card card(State state, String key, String label, String value, String note) {
        return new PageView.Card(key, label, value, note, FindingWords.key(state), key);
    }

    /** A word in place of a number, with no working behind it. */
    private static PageView.Card unopened(State state, String key, String label, String value, String note) {
        return new PageView.Card(key, label, value, note, FindingWords.key(state), null);
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
