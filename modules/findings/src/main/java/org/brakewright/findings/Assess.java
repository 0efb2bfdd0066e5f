package org.brakewright.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.feel.Feel;
import org.brakewright.analysis.feel.Feels;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.ledger.Ledger;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.solution.Solutions;
import org.brakewright.analysis.stop.Stops;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.cure.Cures;
import org.brakewright.findings.rules.StopOverTime;
import org.brakewright.model.Build;
import org.brakewright.model.Tag;

/** The whole pipeline: build, resolved, analysed, judged. */
public final class Assess {
    private Assess() {}

    /** Assesses a build in full. */
    public static AssessOutcome assess(Build build) {
        return andFollowed(first(build));
    }

    private static AssessOutcome andFollowed(AssessOutcome first) {
        return switch (first) {
            case AssessOutcome.Unusable unusable -> unusable;
            case AssessOutcome.Assessed assessed -> new AssessOutcome.Assessed(followed(assessed.assessment()));
        };
    }

    /**
     * Assesses a build as far as drawings need it: every number and every judgement, but no advice, no cures, and no word on
     * how heavy each assumption weighs.
     */
    public static AssessOutcome forDrawings(Build build) {
        return switch (Resolve.resolve(build)) {
            case Resolution.Unusable unusable -> new AssessOutcome.Unusable(unusable.problems());
            case Resolution.Resolved resolved -> andFollowed(new AssessOutcome.Assessed(judged(build, resolved)));
        };
    }

    private static Assessment judged(Build build, Resolution.Resolved resolved) {
        Analysis analysis = Analyse.analyse(resolved.build());
        Facts facts = new Facts(resolved.build(), analysis, assumed(resolved.ledger()));
        List<Finding> findings = new ArrayList<>(Rules.judge(facts));
        findings.sort(Comparator.comparing(Finding::state));
        return new Assessment(
                build,
                resolved.build(),
                analysis,
                Headline.of(analysis),
                feel(build, resolved, analysis),
                Solutions.of(resolved.build(), analysis),
                List.copyOf(findings),
                List.of());
    }

    /** Assesses a build but for its stops over time, for whoever waits for an answer; {@link #followed} adds them. */
    public static AssessOutcome first(Build build) {
        return switch (Resolve.resolve(build)) {
            case Resolution.Unusable unusable -> new AssessOutcome.Unusable(unusable.problems());
            case Resolution.Resolved resolved -> new AssessOutcome.Assessed(assess(build, resolved));
        };
    }

    /** A first assessment with the stops that its build asks for, and with what is to be said of them. */
    public static Assessment followed(Assessment first) {
        if (first.resolved().stops().isEmpty()) {
            return first;
        }
        Analysis analysis = first.analysis()
                .with(Stops.of(first.resolved(), first.analysis().hardStop()));
        List<Finding> findings = new ArrayList<>(first.findings());
        findings.addAll(new StopOverTime().judge(new Facts(first.resolved(), analysis)));
        findings.sort(Comparator.comparing(Finding::state).thenComparing(Rules.ORDER));
        return new Assessment(
                first.build(),
                first.resolved(),
                analysis,
                first.headline(),
                first.feel(),
                first.solution(),
                List.copyOf(findings),
                first.ledger());
    }

    private static Assessment assess(Build build, Resolution.Resolved resolved) {
        Analysis analysis = Analyse.withAdvice(resolved.build());
        Facts facts = new Facts(resolved.build(), analysis, assumed(resolved.ledger()));
        Headline headline = Headline.of(analysis);
        List<Finding> findings = new ArrayList<>(new Cures(build, facts, Rules.judge(facts), Rules::judge).added());
        findings.sort(Comparator.comparing(Finding::state));
        return new Assessment(
                build,
                resolved.build(),
                analysis,
                headline,
                feel(build, resolved, analysis),
                Solutions.of(resolved.build(), analysis),
                List.copyOf(findings),
                Ledger.weigh(build, resolved.build(), resolved.ledger(), headline));
    }

    private static Feel feel(Build build, Resolution.Resolved resolved, Analysis analysis) {
        HardStop stop = analysis.hardStop();
        return Feels.of(build, resolved, stop == null ? null : stop.point().pedalForceN());
    }

    private static Map<String, Tag> assumed(List<Assumption> ledger) {
        Map<String, Tag> tags = new HashMap<>();
        ledger.forEach(assumption -> tags.put(assumption.path(), assumption.tag()));
        return Map.copyOf(tags);
    }
}
