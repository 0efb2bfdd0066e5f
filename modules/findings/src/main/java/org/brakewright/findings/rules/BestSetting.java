package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.setting.Advice;
import org.brakewright.analysis.setting.Setting;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/**
 * The setting of bar or valve that leaves most on both sides over all cases, and how far the present one is from it. A
 * setting whose margin is below zero while a better one has some to spare is a caution; so is a car that no setting suits.
 */
public final class BestSetting implements Rule {
    /** What a builder would not turn a bar for, share; estimate. */
    private static final double WORTHWHILE = 0.02;

    @Override
    public String key() {
        return "best_setting";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        Advice advice = facts.analysis().advice();
        Setting setting = advice == null ? null : advice.setting();
        return setting == null ? List.of() : List.of(judge(setting));
    }

    private Finding judge(Setting setting) {
        double gain = setting.atBest().margin() - setting.atPresent().margin();
        boolean bad = setting.atPresent().margin() < 0;
        boolean turn = gain > WORTHWHILE || (bad && setting.satisfiesAll());
        Judged judged = Judged.as(bad ? State.CAUTION : State.FINE, this)
                .about(setting.kind() == Setting.Kind.BAR ? "balance bar" : "proportioning valve")
                .with("present_margin", Figure.ratio(setting.atPresent().margin()))
                .with("best_margin", Figure.ratio(setting.atBest().margin()))
                .inputs(
                        setting.kind() == Setting.Kind.BAR
                                ? "apply.balance_bar.offset"
                                : "apply.proportioning_valve.knee");
        Double turns = setting.turns();
        if (turns == null) {
            judged.found(Figure.pressure(setting.best()));
        } else {
            judged.found(Figure.ratio(Math.abs(turns)));
        }
        return judged.saying(variant(setting, turn)).finding();
    }

    private static String variant(Setting setting, boolean turn) {
        String none = setting.satisfiesAll() ? "" : "none_";
        if (!turn) {
            return none + "stay";
        }
        Double turns = setting.turns();
        if (turns == null) {
            return none + "knee";
        }
        return none + (turns > 0 ? "front" : "rear");
    }
}
