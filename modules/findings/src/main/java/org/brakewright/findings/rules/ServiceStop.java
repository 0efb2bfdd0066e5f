package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;

/**
 * The stop that each chosen rule set asks for: enough deceleration, without locking a wheel, at no more than its force.
 * With less grip than the stop needs no car passes, so nothing is said about this one.
 */
public final class ServiceStop implements Rule {
    private static final Demand UN =
            new Demand(RuleSet.UN_R13H, 6.43, 500, "UN R13-H Annex 3, service brake, 100 km/h", Tag.FROM_MEMORY);
    private static final Demand FMVSS = new Demand(
            RuleSet.FMVSS_135, 6.43, 500, "FMVSS 135 S7.5, cold effectiveness, 100 km/h in 70 m", Tag.FROM_MEMORY);
    private static final Demand STATE = new Demand(
            RuleSet.STATE_ASSESSMENT,
            2.9,
            885,
            "NSW brake assessment manual 2013, p. 12, pre-test from 30 km/h",
            Tag.VERIFIED);

    /**
     * What a rule set asks.
     *
     * @param deceleration m/s2
     * @param force N at the pad
     */
    private record Demand(RuleSet ruleSet, double deceleration, double force, String whose, Tag tag) {}

    @Override
    public String key() {
        return "service_stop";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<Finding> findings = new ArrayList<>();
        for (Demand demand : List.of(UN, FMVSS, STATE)) {
            if (facts.answersTo(demand.ruleSet())) {
                findings.add(judge(facts, demand));
            }
        }
        return List.copyOf(findings);
    }

    private Finding judge(Facts facts, Demand demand) {
        double needed = demand.deceleration() / Gravity.STANDARD;
        double effort = facts.analysis().effortAt(needed);
        double lock = leastLock(facts);
        if (effort > demand.force()) {
            return tooHard(facts, demand, effort);
        }
        if (lock < needed && facts.analysis().grip() >= needed) {
            return begun(State.STOP, facts, demand)
                    .saying("locks")
                    .found(Figure.g(lock))
                    .against(Figure.g(needed), demand.whose(), demand.tag())
                    .with("effort", Figure.force(effort))
                    .finding();
        }
        boolean slippery = lock < needed;
        return begun(slippery ? State.CANNOT_TELL : Standing.whenMet(demand.tag()), facts, demand)
                .saying(slippery ? "slippery" : "")
                .found(Figure.force(effort))
                .against(Figure.force(demand.force()), demand.whose(), demand.tag())
                .with("first_lock", Figure.g(lock))
                .finding();
    }

    private Finding tooHard(Facts facts, Demand demand, double effort) {
        Judged judged = begun(State.STOP, facts, demand)
                .against(Figure.force(demand.force()), demand.whose(), demand.tag())
                .with("first_lock", Figure.g(leastLock(facts)));
        boolean reached = effort < Double.POSITIVE_INFINITY;
        return (reached ? judged.found(Figure.force(effort)) : judged.saying("none")).finding();
    }

    private Judged begun(State state, Facts facts, Demand demand) {
        return Judged.as(state, this)
                .about(demand.ruleSet().words())
                .with("deceleration", Figure.g(demand.deceleration() / Gravity.STANDARD))
                .with("grip", Figure.ratio(facts.analysis().grip()))
                .inputs("pedal.ratio", "car.grip");
    }

    private static double leastLock(Facts facts) {
        double least = Double.POSITIVE_INFINITY;
        for (LoadCaseResult loadCase : facts.analysis().loadCases()) {
            least = Math.min(least, loadCase.firstLockG(facts.analysis().grip()));
        }
        return least;
    }
}
