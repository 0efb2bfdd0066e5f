package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/** End float of the balance bar between its clevises: neither clamped nor wandering. */
public final class BarFloat implements Rule {
    private static final double MOST = 2.0e-3;

    /** An estimate: what a feeler gauge of the thinnest kind no longer finds. */
    private static final double NONE = 0.1e-3;

    @Override
    public String key() {
        return "bar_float";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        BarState bar = facts.analysis().bar();
        return bar == null ? List.of() : List.of(finding(bar.sideFloatM()));
    }

    private Finding finding(@Nullable Double sideFloat) {
        if (sideFloat == null) {
            return against(Judged.as(State.CANNOT_TELL, this)).finding();
        }
        Judged judged = against(Judged.as(state(sideFloat), this)).found(Figure.length(sideFloat));
        return sideFloat < NONE ? judged.saying("clamped").finding() : judged.finding();
    }

    private static Judged against(Judged judged) {
        return judged.against(
                        Figure.length(MOST),
                        "end float of both clevises together; sources differ, 1.5 to 2 mm",
                        Tag.COMMON_PRACTICE)
                .inputs("apply.balance_bar.side_float");
    }

    private static State state(double sideFloat) {
        return sideFloat < NONE || sideFloat > MOST ? State.CAUTION : State.FINE;
    }
}
