package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** Held to analysis, which has Euler's formula in its tests. */
class MountBucklingTest {
    private static final MountBuckling RULE = new MountBuckling();

    @Test
    void aLongBraceThatIsPressedBowsOut() {
        double fails = found(only(RULE, Mounted.braced(540, 60)));
        assertThat(judged(0.49 * fails).state()).isEqualTo(State.FINE);
        Finding near = judged(0.51 * fails);
        assertThat(near.state()).isEqualTo(State.CAUTION);
        assertThat(limitValue(near)).isCloseTo(1.02 * fails, within(1e-3));
        assertThat(judged(1.01 * fails).state()).isEqualTo(State.STOP);
    }

    private static Finding judged(double strength) {
        return only(RULE, Mounted.braced(540, 60).with("mount.loads.strength", strength + " N"));
    }

    @Test
    void aMountWithoutBraceHasNoneToBow() {
        assertThat(Mounted.car().judgedBy(RULE)).isEmpty();
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
