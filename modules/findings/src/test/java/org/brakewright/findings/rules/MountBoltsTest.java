package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import java.util.Comparator;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** Held to analysis at the very forces at which bolts reach their limits; grades by standards.md 5.1. */
class MountBoltsTest {
    private static final MountBolts RULE = new MountBolts();

    @Test
    void boltsThatHoldAreFine() {
        Finding finding = only(RULE, Mounted.car());
        BoltState weakest = weakest(Mounted.car(), BoltState::provedToN);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.subject()).isEqualTo(weakest.name());
        assertThat(found(finding)).isCloseTo(weakest.provedToN(), within(1e-3));
        assertThat(limitValue(finding)).isEqualTo(2250);
    }

    @Test
    void aFootNotToldLeavesPryingOpen() {
        TestCar car = Mounted.car().without(Mounted.BOLTS + "root_to_bolt").without(Mounted.BOLTS + "bolt_to_edge");
        assertThat(only(RULE, car).state()).isEqualTo(State.CANNOT_TELL);
    }

    @Test
    void boltsOrSheetThatGiveWayAreAStop() {
        TestCar weak = Mounted.car()
                .with(Mounted.BOLTS + "diameter", "4 mm")
                .with(Mounted.BOLTS + "pitch", "0.7 mm")
                .with(Mounted.BOLTS + "grade", "class_4_6")
                .with("mount.loads.sideways", "50 %")
                .with("mount.loads.strength", "10000 N");
        Finding bolt = only(RULE, weak);
        assertThat(bolt.state()).isEqualTo(State.STOP);
        assertThat(bolt.variant()).isEmpty();
        assertThat(found(bolt)).isLessThan(10_000);
        Finding sheet = only(
                RULE,
                Mounted.car()
                        .with("mount.panel.thickness", "0.5 mm")
                        .with("mount.loads.sideways", "50 %")
                        .with("mount.loads.strength", "10000 N"));
        assertThat(sheet.state()).isEqualTo(State.STOP);
        assertThat(sheet.variant()).isEqualTo("sheet");
    }

    /** NSW brake assessment manual 2013, p. 23: at least ISO 8.8 or SAE grade 5. */
    @Test
    void aSoftGradeIsACaution() {
        assertThat(only(RULE, Mounted.car().with(Mounted.BOLTS + "grade", "class_5_8"))
                        .variant())
                .isEqualTo("grade");
        assertThat(only(RULE, Mounted.car().with(Mounted.BOLTS + "grade", "sae_5"))
                        .state())
                .isEqualTo(State.FINE);
    }

    @Test
    void aThinNutIsACaution() {
        Finding finding = only(RULE, Mounted.car().with(Mounted.BOLTS + "engagement", "4 mm"));
        assertThat(finding.variant()).isEqualTo("thread");
        assertThat(found(finding)).isCloseTo(0.004, within(1e-12));
    }

    @Test
    void aJointThatSlipsIsACaution() {
        Finding finding = only(
                RULE, Mounted.car().with(Mounted.BOLTS + "torque", "0.5 N m").with("mount.loads.sideways", "50 %"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("slips");
        assertThat(limitValue(finding)).isEqualTo(1250);
    }

    @Test
    void isSilentOnAWeldedBracket() {
        assertThat(Mounted.welded().judgedBy(RULE)).isEmpty();
    }

    private static BoltState weakest(TestCar car, java.util.function.ToDoubleFunction<BoltState> by) {
        return Mounted.state(car).bolts().stream()
                .min(Comparator.comparingDouble(by))
                .orElseThrow();
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
