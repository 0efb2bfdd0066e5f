package org.brakewright.findings.rules;

import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.quantity.Dimension;

/**
 * What hot brakes leave at the most a test lets the foot give, against what rules ask after their fade cycle. A fall that
 * was only assumed is never a stop.
 */
public final class Fade implements Rule {
    private static final Limit UN =
            limit(4.82, "UN R13-H Annex 3, hot performance after Type-I, at no more than 500 N");
    private static final Limit FMVSS = limit(4.88, "FMVSS 135 S7.14, hot performance, at no more than 500 N");
    private static final Limit SHARE = new Limit(
            Figure.ratio(0.6), "UN R13-H Annex 3 and FMVSS 135 S7.14, share of the cold performance", Tag.FROM_MEMORY);

    @Override
    public String key() {
        return "fade";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().weakened().stream()
                .filter(failure -> failure.what() == What.FADE)
                .map(failure -> judge(facts, failure))
                .toList();
    }

    private Finding judge(Facts facts, Failure hot) {
        Double effort = hot.effortFor().getLast().pedalForceN();
        Optional<Limit> asked = asked(facts);
        if (asked.isPresent() && below(hot, asked.get())) {
            return told(facts, hot, failed(facts).saying(assumed(facts) ? "assumed" : ""), asked.get());
        }
        if (asked.isPresent() && hot.shareOfWhole() < SHARE.figure().value()) {
            return finding(
                    facts,
                    hot,
                    failed(facts)
                            .saying("share")
                            .found(Figure.ratio(hot.shareOfWhole()))
                            .against(SHARE));
        }
        if (effort == null) {
            return finding(
                    facts, hot, Judged.as(State.CAUTION, this).saying("leg").against(leg(facts)));
        }
        if (asked.isPresent()) {
            Judged judged = Judged.as(Standing.whenMet(asked.get().tag()), this);
            return told(facts, hot, judged.with("effort", Figure.force(effort)), asked.get());
        }
        return finding(
                facts,
                hot,
                Judged.as(State.FINE, this).found(Figure.force(effort)).against(leg(facts)));
    }

    /** A stop only where the friction that fails a rule was given by somebody. */
    private Judged failed(Facts facts) {
        return Judged.as(assumed(facts) ? State.CAUTION : State.STOP, this);
    }

    private static boolean below(Failure hot, Limit limit) {
        return Figure.g(hot.decelerationG()).value() < limit.figure().value();
    }

    private static boolean assumed(Facts facts) {
        return facts.assumed().keySet().stream().anyMatch(path -> path.endsWith("_hot"));
    }

    private static Optional<Limit> asked(Facts facts) {
        if (facts.answersTo(RuleSet.FMVSS_135)) {
            return Optional.of(FMVSS);
        }
        return facts.answersTo(RuleSet.UN_R13H) ? Optional.of(UN) : Optional.empty();
    }

    private static Limit leg(Facts facts) {
        return new Limit(Figure.force(facts.aims().panicPush()), "what a leg gives at all", Tag.COMMON_PRACTICE);
    }

    private static Finding told(Facts facts, Failure hot, Judged judged, Limit limit) {
        return finding(facts, hot, judged.found(Figure.g(hot.decelerationG())).against(limit));
    }

    private static Finding finding(Facts facts, Failure hot, Judged judged) {
        return judged.with("push", Figure.force(hot.pedalForceN()))
                .with("left", Figure.g(hot.decelerationG()))
                .with("share", Figure.ratio(hot.shareOfWhole()))
                .with("hard_stop", Figure.g(facts.aims().hardStopG()))
                .inputs(
                        "front.pad_friction_hot",
                        "rear.pad_friction_hot",
                        "rear.brake_factor_hot",
                        "rear.lining_friction_hot",
                        "pedal.ratio")
                .finding();
    }

    private static Limit limit(double metrePerSecondSquared, String whose) {
        return new Limit(new Figure(metrePerSecondSquared, Dimension.ACCELERATION), whose, Tag.FROM_MEMORY);
    }
}
