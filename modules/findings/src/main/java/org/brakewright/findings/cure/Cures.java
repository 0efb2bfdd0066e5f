package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.ClutchStates;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.findings.rules.BalanceCases;
import org.brakewright.model.Build;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/**
 * Tries single changes on the whole car, least work first, and keeps for each finding the first that cures it.
 *
 * <p>A change that cures without making anything else worse is preferred; then one that costs something elsewhere, as
 * long as it makes no new stop and no stop worse that matters as much; then one that only lifts a stop to a caution.
 * Trials are shared by all findings. They leave out the balance in every case, which takes long; so a change that would be
 * offered is tried once more with it.
 */
public final class Cures {
    private static final Set<String> NOT_TRIED = Set.of("air_in_circuit", "fade");
    private static final Rule BALANCE_CASES = new BalanceCases();
    /** Keys of the rules that judge the clutch begin so; what cures a clutch cures nothing else. */
    private static final String CLUTCH = "clutch_";

    private final Build build;
    private final Facts facts;
    private final Map<String, Tag> assumed;
    private final List<Finding> before;
    private final Function<Facts, List<Finding>> judge;
    private final List<Change> changes;
    private final @Nullable Trial[] trials;
    private final Map<Change, Optional<ResolvedBuild>> tried = new HashMap<>();
    private final Map<Integer, Boolean> newStops = new HashMap<>();

    /**
     * Prepares cures for a car.
     *
     * @param build as written
     * @param facts the car as it stands
     * @param before its findings
     * @param judge all rules
     */
    public Cures(Build build, Facts facts, List<Finding> before, Function<Facts, List<Finding>> judge) {
        this.build = build;
        this.facts = facts;
        this.assumed = facts.assumed();
        this.before = before;
        this.judge = judge;
        this.changes = new ArrayList<>(Changes.of(build, facts.build()));
        changes.addAll(ClutchChanges.of(
                build, facts.build().clutch().orElse(null), facts.analysis().clutch()));
        this.trials = new Trial[changes.size()];
    }

    /** The findings, each with its cure where one was found. */
    public List<Finding> added() {
        List<Finding> cured = new ArrayList<>();
        for (Finding finding : before) {
            cured.add(curable(finding) ? cureOf(finding).map(finding::withCure).orElse(finding) : finding);
        }
        return List.copyOf(cured);
    }

    /** Only what trials judge again; they do without air and fade, which cost too much to try on every change. */
    private static boolean curable(Finding finding) {
        return !NOT_TRIED.contains(finding.key())
                && (finding.state() == State.STOP || finding.state() == State.CAUTION)
                && finding.limit() != null;
    }

    private Optional<Cure> cureOf(Finding finding) {
        Cure costly = null;
        Cure partial = null;
        for (int i = 0; i < changes.size(); i++) {
            if (changes.get(i).kind().ofClutch() != finding.key().startsWith(CLUTCH)) {
                continue;
            }
            Trial trial = trial(i);
            State becomes = trial.stateOf(finding);
            if (becomes == null || becomes.compareTo(finding.state()) <= 0 || trial.refusedFor(finding)) {
                continue;
            }
            boolean partly = becomes == State.CAUTION;
            boolean dear = !partly && !trial.worse().isEmpty();
            if ((partly && partial != null) || (dear && costly != null) || newStopInSomeCase(i)) {
                continue;
            }
            Cure cure = new Cure(changes.get(i), becomes, trial.worse(), trial.headline());
            if (!partly && !dear) {
                return Optional.of(cure);
            }
            partial = partly ? cure : partial;
            costly = dear ? cure : costly;
        }
        return Optional.ofNullable(costly != null ? costly : partial);
    }

    private Trial trial(int index) {
        Trial trial = trials[index];
        if (trial == null) {
            trial = run(changes.get(index));
            trials[index] = trial;
        }
        return trial;
    }

    private Trial run(Change change) {
        return tried(change).map(this::run).orElse(Trial.IMPOSSIBLE);
    }

    private Trial run(ResolvedBuild tried) {
        Analysis analysis = Analyse.forJudging(tried, clutch(tried));
        List<Finding> after = judge.apply(new Facts(tried, analysis, assumed));
        return Trial.compare(before, after, Headline.of(analysis));
    }

    /** The car with a change; empty when it contradicts something. */
    private Optional<ResolvedBuild> tried(Change change) {
        return tried.computeIfAbsent(
                change,
                each -> Resolve.resolve(build, each.values()) instanceof Resolution.Resolved resolved
                        ? Optional.of(resolved.build())
                        : Optional.empty());
    }

    private @Nullable ClutchState clutch(ResolvedBuild tried) {
        return tried.clutch().equals(facts.build().clutch())
                ? facts.analysis().clutch()
                : ClutchStates.of(tried.clutch());
    }

    /** Whether a change that makes no stop in its trial makes one with other pads or at speed. */
    private boolean newStopInSomeCase(int index) {
        return newStops.computeIfAbsent(
                index,
                each -> tried(changes.get(each))
                        .map(car -> isNewStop(BALANCE_CASES.judge(new Facts(car, Analyse.withCases(car), assumed))))
                        .orElse(true));
    }

    private boolean isNewStop(List<Finding> after) {
        return isStop(after) && !isStop(before);
    }

    private static boolean isStop(List<Finding> findings) {
        return findings.stream()
                .anyMatch(each -> each.state() == State.STOP && each.key().equals(BALANCE_CASES.key()));
    }
}
