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

/** Held to analysis, which has the published curves in its tests. */
class MountEnduranceTest {
    private static final MountEndurance RULE = new MountEndurance();

    @Test
    void fromALifeToAFewStops() {
        double stops = found(judged(1000));
        assertThat(judged(0.99 * stops).state()).isEqualTo(State.CANNOT_TELL);
        assertThat(judged(1.01 * stops).state()).isEqualTo(State.CAUTION);
        Finding few = judged(10.1 * stops);
        assertThat(few.state()).isEqualTo(State.STOP);
        assertThat(limitValue(few)).isCloseTo(10.1 * stops, within(1e-3));
    }

    private static Finding judged(double stops) {
        return only(RULE, Mounted.car().with("mount.loads.stop_force", "600 N").with("mount.loads.stops", "" + stops));
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
