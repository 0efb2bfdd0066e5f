package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import java.util.Map;
import org.brakewright.analysis.Analyse;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;

/**
 * The test car: loads 400/400 kg, h/L 0.2, front share 0.7 of the force, so that the rear locks first from (0.5 - 0.3)/0.2 =
 * 1.0 g, beyond the grip of 0.9.
 */
class BalanceCasesTest {
    private static final BalanceCases RULE = new BalanceCases();

    /** With front friction three quarters the share is 0.525/0.825, and critical (0.5 - 0.3/0.825)/0.2 = 0.6818 g. */
    private static TestCar fades() {
        return TestCar.twin()
                .with("front.pad_friction_cold", "0.42")
                .with("front.pad_friction_hot", "0.315")
                .with("front.pad_friction_wet", "0.42")
                .with("rear.pad_friction_cold", "0.36")
                .with("rear.pad_friction_hot", "0.36")
                .with("rear.pad_friction_wet", "0.36");
    }

    @Test
    void stopsWhereTheGivenHotPadsLetTheRearLockFirst() {
        Finding finding = only(RULE, fades());
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.subject()).contains("hot pads");
        assertThat(found(finding) / Gravity.STANDARD).isCloseTo((0.5 - 0.3 / 0.825) / 0.2, within(1e-6));
        assertThat(limitValue(finding) / Gravity.STANDARD).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void isOnlyCautiousWhereThatRestsOnAnAssumption() {
        Facts facts = fades().facts();
        Finding finding = RULE.judge(
                        new Facts(facts.build(), facts.analysis(), Map.of("front.pad_friction_hot", Tag.ESTIMATE)))
                .getFirst();
        assertThat(finding.state()).isEqualTo(State.CAUTION);
    }

    /** Front pads that fade alone by a fifth of a hundredth change nothing that matters. */
    @Test
    void isFineWhenNoPadChangesMuch() {
        Finding finding = only(RULE, fades().with("front.pad_friction_hot", "0.419"));
        assertThat(finding.state()).isEqualTo(State.FINE);
    }

    /**
     * Engine braking of 0.1 g at the rear wheels: with shares 0.7/0.3 the rear is ahead long before the grip; but the clutch
     * cures that.
     */
    @Test
    void isOnlyCautiousWhereTheEngineLocksTheRearFirst() {
        Finding finding = only(
                RULE,
                fades().with("front.pad_friction_hot", "0.42")
                        .with("car.engine_braking.driven_axle", "rear")
                        .with("car.engine_braking.deceleration", "0.1 g"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.subject()).contains("engine braking");
    }

    /** Front discs that only begin at 10 bar leave the first part of every stop to the rear; what follows is not "always". */
    @Test
    void saysBetweenWhichDecelerations() {
        Finding finding = only(RULE, fades().with("front.threshold_pressure", "10 bar"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("between");
        assertThat(found(finding) / Gravity.STANDARD).isCloseTo(0.15, within(1e-9));
    }

    @Test
    void isSilentWhereOnlyJudgementsWereAsked() {
        Facts facts = fades().facts();
        assertThat(RULE.judge(new Facts(facts.build(), Analyse.forJudging(facts.build()))))
                .isEmpty();
    }
}
