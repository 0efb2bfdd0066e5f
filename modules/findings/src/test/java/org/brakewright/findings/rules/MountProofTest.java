package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** A reading is held against the computed movement at the force that was read: it grows evenly. */
class MountProofTest {
    private static final MountProof RULE = new MountProof();

    @Test
    void withoutAReadingNobodyCanTell() {
        Finding finding = only(RULE, Mounted.car());
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(figure("foot", finding)).isEqualTo(500);
        assertThat(figure("pad", finding)).isEqualTo(computed());
    }

    @Test
    void aReadingThatAgreesIsFineAndASofterOneACaution() {
        double at300 = computed() * 300 / 500;
        assertThat(read(0.5 * at300).state()).isEqualTo(State.FINE);
        assertThat(read(1.29 * at300).state()).isEqualTo(State.FINE);
        Finding soft = read(1.31 * at300);
        assertThat(soft.state()).isEqualTo(State.CAUTION);
        assertThat(limitValue(soft)).isCloseTo(1.3 * at300, within(1e-9));
    }

    private static double computed() {
        return Mounted.state(Mounted.car()).loads().getFirst().padM();
    }

    private static Finding read(double pad) {
        return only(
                RULE,
                Mounted.car().with("mount.measured.force", "300 N").with("mount.measured.pad", pad * 1000 + " mm"));
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
