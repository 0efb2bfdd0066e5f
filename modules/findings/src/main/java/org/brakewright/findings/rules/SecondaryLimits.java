package org.brakewright.findings.rules;

import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Limit;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.quantity.Dimension;

/** What rules ask of a car with a circuit or the booster failed. */
final class SecondaryLimits {
    private static final Limit UN =
            limit(2.44, "UN R13-H Annex 3, secondary braking at no more than 500 N", Tag.FROM_MEMORY);
    private static final Limit FMVSS = limit(2.44, "FMVSS 135 S7.10 and S7.11, at no more than 500 N", Tag.FROM_MEMORY);
    private static final Limit STATE = limit(2.55, "NSW brake assessment manual 2013, p. 38", Tag.VERIFIED);
    private static final Limit STATE_BOOSTER = limit(
            0.5 * Gravity.STANDARD, "NSW brake assessment manual 2013, p. 25, half the weight at 500 N", Tag.VERIFIED);

    /** A car that answers to no rule is held against a figure that was read in the text, not against a recalled one. */
    private static final Limit NONE =
            limit(2.55, "no rule set chosen; NSW brake assessment manual 2013, p. 38, as a yardstick", Tag.VERIFIED);

    private SecondaryLimits() {}

    /** The strictest of the rules that the builder answers to. */
    static Limit strictest(Facts facts, Failure.What what) {
        if (facts.answersTo(RuleSet.STATE_ASSESSMENT)) {
            return what == What.BOOSTER ? STATE_BOOSTER : STATE;
        }
        if (facts.answersTo(RuleSet.UN_R13H)) {
            return UN;
        }
        return facts.answersTo(RuleSet.FMVSS_135) ? FMVSS : NONE;
    }

    private static Limit limit(double metrePerSecondSquared, String whose, Tag tag) {
        return new Limit(new Figure(metrePerSecondSquared, Dimension.ACCELERATION), whose, tag);
    }
}
