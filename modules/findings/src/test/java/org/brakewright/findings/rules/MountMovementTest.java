package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** Limits of vehicle makers' checks, standards.md 5.7 (secondary source): 5.0 mm at 500 N, 0.005 mm/N of dash and cowl. */
class MountMovementTest {
    private static final MountMovement RULE = new MountMovement();

    @Test
    void aPadThatMovesMoreThanFiveMillimetresIsAStop() {
        TestCar car = Mounted.car();
        LoadState use = Mounted.state(car).loads().getFirst();
        Finding finding = only(RULE, car);
        assertThat(use.footN()).isEqualTo(500);
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(found(finding)).isCloseTo(use.padM(), within(1e-12)).isGreaterThan(0.005);
        assertThat(limitValue(finding)).isEqualTo(0.005);
    }

    /** Another force in use does not move the limit: movement grows evenly. */
    @Test
    void isJudgedAt500Newton() {
        Finding finding = only(RULE, Mounted.car().with("mount.loads.function", "250 N"));
        assertThat(found(finding)).isCloseTo(found(only(RULE, Mounted.car())), within(1e-9));
    }

    @Test
    void aPanelSofterThanMakersAskForIsACaution() {
        TestCar car = Mounted.braced(-60, 300);
        LoadState use = Mounted.state(car).loads().getFirst();
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isCloseTo(500 / (use.padM() - use.armM()), within(1e-3));
        assertThat(limitValue(finding)).isCloseTo(200e3, within(1e-6));
    }

    @Test
    void aThickPanelIsFine() {
        assertThat(only(RULE, Mounted.car().with("mount.panel.thickness", "5 mm"))
                        .state())
                .isEqualTo(State.FINE);
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
