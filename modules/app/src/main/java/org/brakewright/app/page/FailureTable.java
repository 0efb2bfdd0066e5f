package org.brakewright.app.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.analysis.failure.EffortToMeet;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Limit;
import org.brakewright.findings.State;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;

/** Each case with something failed or weak, at the same push, beside what is asked of it. */
public final class FailureTable {
    private static final List<String> COLUMNS = List.of(
            "case",
            "least deceleration",
            "asked for",
            "that is",
            "effort for it",
            "pedal travel",
            "pedal falls",
            "meets a stop",
            "limited by",
            "whose limit");

    private final Show show;
    private final Assessment assessment;

    /** The table of an assessment. */
    public FailureTable(Show show, Assessment assessment) {
        this.show = show;
        this.assessment = assessment;
    }

    /** All cases. */
    public PageView.Table table() {
        List<Failure> failures = assessment.analysis().failures();
        Stream<Failure> all = Stream.concat(failures.stream(), assessment.analysis().weakened().stream());
        double push = failures.getFirst().pedalForceN();
        return new PageView.Table(
                "With something failed or weak, at " + show.value(push, Dimension.FORCE),
                COLUMNS,
                all.map(this::row).toList());
    }

    /** The same without whose the limits are, for lines of text. */
    public PageView.Table brief() {
        PageView.Table whole = table();
        int last = COLUMNS.size() - 1;
        return new PageView.Table(
                whole.caption(),
                whole.columns().subList(0, last),
                whole.rows().stream().map(row -> row.subList(0, last)).toList());
    }

    private List<String> row(Failure failure) {
        Optional<Finding> finding = finding(failure);
        Optional<Limit> limit = finding.map(Finding::limit);
        return List.of(
                name(failure),
                g(failure.decelerationG()) + " (" + failure.loadCase() + ")",
                limit.map(held ->
                                show.value(held.figure().value(), held.figure().dimension()))
                        .orElse("-"),
                finding.map(found -> FindingWords.word(found.state())).orElse("-"),
                limit.map(held -> effort(failure, held.figure())).orElse("-"),
                show.value(failure.pedalTravelM(), Dimension.LENGTH),
                show.value(failure.pedalFallM(), Dimension.LENGTH),
                meets(failure),
                failure.gripLimited() ? "tyre grip" : "brake force",
                limit.map(held -> held.whose() + " (" + held.tag().words() + ")")
                        .orElse("-"));
    }

    private Optional<Finding> finding(Failure failure) {
        String key = switch (failure.what()) {
            case FRONT_CIRCUIT, REAR_CIRCUIT, FIRST_DIAGONAL, SECOND_DIAGONAL, BOOSTER -> "failed_circuit";
            case AIR_IN_FRONT_CIRCUIT, AIR_IN_REAR_CIRCUIT, AIR_IN_FIRST_DIAGONAL, AIR_IN_SECOND_DIAGONAL ->
                "air_in_circuit";
            case FADE -> "fade";
        };
        String subject = failure.what().name().toLowerCase(Locale.ROOT).replaceFirst("air_in_", "");
        List<Finding> ofKey = assessment.findings().stream()
                .filter(finding -> finding.key().equals(key))
                .toList();
        return ofKey.stream()
                .filter(finding ->
                        finding.subject().isEmpty() || finding.subject().equals(subject))
                .findFirst()
                .or(() -> spokenFor(ofKey));
    }

    /** A circuit without a finding of its own: one that cannot be told either speaks for it, under the same limit. */
    private static Optional<Finding> spokenFor(List<Finding> ofKey) {
        return ofKey.stream()
                .filter(finding -> finding.state() == State.CANNOT_TELL)
                .findFirst();
    }

    private static String name(Failure failure) {
        return switch (failure.what()) {
            case FRONT_CIRCUIT -> "front circuit out";
            case REAR_CIRCUIT -> "rear circuit out";
            case FIRST_DIAGONAL -> "left front and right rear out";
            case SECOND_DIAGONAL -> "right front and left rear out";
            case BOOSTER -> "booster out";
            case AIR_IN_FRONT_CIRCUIT -> "air in front circuit";
            case AIR_IN_REAR_CIRCUIT -> "air in rear circuit";
            case AIR_IN_FIRST_DIAGONAL -> "air, left front and right rear";
            case AIR_IN_SECOND_DIAGONAL -> "air, right front and left rear";
            case FADE -> "brakes hot";
        };
    }

    /** Effort for the deceleration asked for; a leg's push is held against the hard stop, and a share against none. */
    private String effort(Failure failure, Figure asked) {
        if (asked.dimension() == Dimension.FORCE) {
            return effort(failure.effortFor().getLast());
        }
        return failure.effortFor().stream()
                .filter(each -> asked.dimension() == Dimension.ACCELERATION
                        && Math.abs(each.decelerationG() * Gravity.STANDARD - asked.value()) < 1e-9)
                .findFirst()
                .map(this::effort)
                .orElse("-");
    }

    private String effort(EffortToMeet effort) {
        Double push = effort.pedalForceN();
        return push == null ? "no push" : show.value(push, Dimension.FORCE);
    }

    private static String meets(Failure failure) {
        if (failure.reachesStop()) {
            return "pedal or live master at its stop";
        }
        return switch (failure.bar()) {
            case BINDS_AT_TILT_LIMIT -> "bar at its tilt limit";
            case LEANS_ON_BOTTOMED_MASTER -> "failed master, bar leans on it";
            case NONE -> failure.bottomed() ? "failed chamber, push goes on" : "none";
        };
    }

    private String g(double decelerationG) {
        return show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
