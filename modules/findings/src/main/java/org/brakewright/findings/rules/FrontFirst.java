package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;

/** The front must lock first from 0.15 to 0.80 g, by UN R13-H and by FMVSS 135; an anti-lock system is not judged. */
public final class FrontFirst implements Rule {
    private static final double TO_G = 0.80;

    @Override
    public String key() {
        return "front_first";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<Finding> findings = new ArrayList<>();
        if (facts.answersTo(RuleSet.UN_R13H)) {
            findings.add(judge(facts, RuleSet.UN_R13H, "UN R13-H Annex 5, 3.1"));
        }
        if (facts.answersTo(RuleSet.FMVSS_135)) {
            findings.add(judge(facts, RuleSet.FMVSS_135, "FMVSS 135 S7.2, wheel lock sequence"));
        }
        return List.copyOf(findings);
    }

    private Finding judge(Facts facts, RuleSet ruleSet, String clause) {
        double first = Double.POSITIVE_INFINITY;
        for (LoadCaseResult loadCase : facts.analysis().loadCases()) {
            first = Math.min(first, firstWithin(loadCase));
        }
        boolean inverted = first < TO_G;
        Judged judged = Judged.as(inverted ? State.STOP : Standing.whenMet(Tag.FROM_MEMORY), this)
                .about(ruleSet.words())
                .against(Figure.g(TO_G), clause, Tag.FROM_MEMORY)
                .inputs("apply.balance_bar.offset");
        return inverted ? judged.found(Figure.g(first)).finding() : judged.finding();
    }

    private static double firstWithin(LoadCaseResult loadCase) {
        for (RearFirst stretch : loadCase.rearFirst()) {
            if (stretch.fromG() < TO_G && stretch.matters()) {
                return Math.max(RearFirst.JUDGED_FROM_G, stretch.fromG());
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
