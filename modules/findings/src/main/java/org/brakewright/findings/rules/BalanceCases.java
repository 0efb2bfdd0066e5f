package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.balance.BalanceCase;
import org.brakewright.analysis.balance.PadState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedBrake;

/**
 * The front must lock first also with cold, hot or wet pads, at speed and in gear. A case that rests on what the builder
 * gave is a stop; one that rests on an assumed friction, on front pads that fade alone or on an engine in gear, is a caution.
 */
public final class BalanceCases implements Rule {
    private static final Comparator<BalanceCase> BY_REACH = Comparator.comparingDouble(BalanceCase::reach);

    @Override
    public String key() {
        return "balance_cases";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        List<BalanceCase> cases = facts.analysis().balanceCases().stream()
                .filter(each -> !each.name().plain() && told(each, facts))
                .toList();
        if (cases.isEmpty()) {
            return List.of();
        }
        Optional<BalanceCase> certain = cases.stream()
                .filter(each -> each.rearFirstWithinGrip() && certain(each, facts))
                .min(BY_REACH);
        if (certain.isPresent()) {
            return List.of(finding(State.STOP, certain.get()));
        }
        BalanceCase worst = cases.stream().min(BY_REACH).orElseThrow();
        return List.of(finding(worst.rearFirstWithinGrip() ? State.CAUTION : State.FINE, worst));
    }

    /** Front pads that fade alone are judged only by a hot friction that was given: a guess of it warns of every car. */
    private static boolean told(BalanceCase each, Facts facts) {
        return each.name().sameState() || given("front", facts.build().front(), PadState.HOT, facts);
    }

    /** Whether nothing but what the builder gave makes the case, and no clutch cures it. */
    private static boolean certain(BalanceCase each, Facts facts) {
        PadState pads = each.name().pads();
        boolean known = pads == PadState.WORKING
                || (given("front", facts.build().front(), pads, facts)
                        && given("rear", facts.build().rear(), pads, facts));
        return known && each.name().sameState() && !each.name().engineBraking();
    }

    private static boolean given(String axle, ResolvedBrake brake, PadState pads, Facts facts) {
        List<String> keys = brake instanceof ResolvedBrake.Drum
                ? List.of(".brake_factor_", ".lining_friction_")
                : List.of(".pad_friction_");
        return keys.stream().noneMatch(key -> facts.assumed().containsKey(axle + key + pads.key()));
    }

    private Finding finding(State state, BalanceCase worst) {
        Judged judged = Judged.as(state, this)
                .about(worst.name().words())
                .inputs("apply.balance_bar.offset", "front.pad_friction_hot", "rear.pad_friction_hot");
        RearLocksFirst.describe(judged, worst.rearFirst(), worst.rearFirstWithinGrip());
        return judged.against(
                        Figure.g(worst.greatestDecelerationG()),
                        "what the tyres can give in that case; rear wheels that lock first turn a car round",
                        Tag.COMMON_PRACTICE)
                .finding();
    }
}
