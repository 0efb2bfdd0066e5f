package org.brakewright.analysis.setting;

import java.util.List;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.CaseName;
import org.brakewright.analysis.balance.Cases;
import org.brakewright.analysis.balance.Cases.Case;
import org.brakewright.analysis.balance.EfficiencyLine;
import org.brakewright.analysis.balance.Lead;
import org.brakewright.analysis.balance.Situation;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * The two-sided margin of a setting over all cases in which both axles' pads are in the same state.
 *
 * <p>One side: the rear must not lock first from 0.15 g (in gear from half) to the greatest deceleration; its margin is by how much the rear
 * could brake more. Other side: the first lock must not come too early. With UN R13-H chosen that is its line in the cases
 * of the rule; else {@link #LEAST_EFFICIENCY} at the car's grip in every case. Front pads faded alone are told among the
 * cases, but set no setting: a guess of a quarter would give away that much grip everywhere else.
 */
public final class Margins {
    /** Part of the possible deceleration that is asked at the first lock when no rule set is chosen; estimate, no source. */
    public static final double LEAST_EFFICIENCY = 0.75;

    private static final double[] LINE_GRIPS = {0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8};

    private final ResolvedBuild build;
    private final List<Case> cases;
    private final boolean byRule;

    /** Margins of a car, whatever pushes its fluid. */
    public Margins(ResolvedBuild build) {
        this.build = build;
        this.cases =
                Cases.of(build).stream().filter(each -> each.name().sameState()).toList();
        this.byRule = build.ruleSets().contains(RuleSet.UN_R13H);
    }

    /** The margin of the car with an apply system. */
    public SettingMargin of(ResolvedApply apply) {
        ChainCurve curve = ChainCurve.of(Chain.of(build.withApply(apply)));
        Worst rear = new Worst();
        Worst grip = new Worst();
        for (Case each : cases) {
            double lead = new Lead(curve, each.situation())
                    .least(each.name().judgedFromG(each.greatestG()), each.greatestG());
            rear.take(lead - 1, each.name(), build.car().grip());
            useOfGrip(curve, each, grip);
        }
        boolean braked = Double.isFinite(rear.margin);
        return new SettingMargin(
                Math.min(rear.margin, grip.margin),
                braked ? rear.margin : null,
                braked ? rear.name : null,
                grip.margin,
                grip.name,
                grip.grip);
    }

    private void useOfGrip(ChainCurve curve, Case each, Worst worst) {
        if (!byRule) {
            double grip = build.car().grip();
            double used = firstLockG(curve, each.situation(), grip) / each.greatestG();
            worst.take(used / LEAST_EFFICIENCY - 1, each.name(), grip);
        } else if (each.name().ofTheRules()) {
            for (double grip : LINE_GRIPS) {
                double reached = firstLockG(curve, each.situation(), grip);
                worst.take(reached / EfficiencyLine.needed(grip) - 1, each.name(), grip);
            }
        }
    }

    /** Deceleration of the first lock in g, or what the hardest push gives. */
    private static double firstLockG(ChainCurve curve, Situation situation, double grip) {
        double first = new Balance(curve, situation).firstLockAsDrawnG(grip);
        return Math.min(first, situation.decelerationG(curve.bends().getLast()));
    }

    /** The least margin so far and where it was. */
    private final class Worst {
        private double margin = Double.POSITIVE_INFINITY;
        private CaseName name = cases.getFirst().name();
        private double grip = build.car().grip();

        void take(double value, CaseName of, double at) {
            if (value < margin) {
                margin = value;
                name = of;
                grip = at;
            }
        }
    }
}
