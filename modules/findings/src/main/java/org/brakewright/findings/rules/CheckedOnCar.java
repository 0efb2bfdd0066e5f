package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.proof.Checks;
import org.jspecify.annotations.Nullable;

/** States that must never be driven and that no calculation sees: somebody has to look. */
public final class CheckedOnCar implements Rule {
    @Override
    public String key() {
        return "checked_on_car";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        Checks checks = facts.build().checks();
        List<Finding> findings = new ArrayList<>();
        add(findings, "pushrods_retained", checks.pushrodsRetained());
        add(findings, "free_play_present", freePlay(facts, checks));
        add(findings, "pedal_returns", checks.pedalReturns());
        add(findings, "no_leak", checks.noLeak());
        add(findings, "pedal_holds", checks.pedalHolds());
        add(findings, "brake_lights", checks.brakeLights());
        return List.copyOf(findings);
    }

    /** No free play at the pad in the build file is as good as somebody finding none. */
    private static @Nullable Boolean freePlay(Facts facts, Checks checks) {
        return facts.build().pedal().freePlay() <= 0 ? Boolean.FALSE : checks.freePlayPresent();
    }

    private void add(List<Finding> findings, String what, @Nullable Boolean seen) {
        findings.add(Judged.as(state(seen), this)
                .about(what)
                .inputs("checks." + what)
                .finding());
    }

    private static State state(@Nullable Boolean seen) {
        if (seen == null) {
            return State.CANNOT_TELL;
        }
        return seen ? State.FINE : State.STOP;
    }
}
