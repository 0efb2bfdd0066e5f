package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import java.util.Comparator;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.PartState;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** Held to analysis at the very forces at which parts reach their limits. */
class MountStressTest {
    private static final MountStress RULE = new MountStress();

    @Test
    void fromFineToSetToBroken() {
        PartState weakest = weakest(Mounted.state(Mounted.car()), PartState::yieldsAtN);
        PartState brittlest = weakest(Mounted.state(Mounted.car()), PartState::breaksAtN);
        assertThat(judged(0.99 * weakest.yieldsAtN(), 0.99 * weakest.yieldsAtN())
                        .state())
                .isEqualTo(State.FINE);
        Finding set = judged(1.01 * weakest.yieldsAtN(), 0.5 * weakest.yieldsAtN());
        assertThat(set.state()).isEqualTo(State.CAUTION);
        assertThat(set.subject()).isEqualTo(weakest.name());
        assertThat(found(set)).isCloseTo(weakest.yieldsAtN(), within(1e-3));
        Finding broken = judged(0.5 * weakest.yieldsAtN(), 1.01 * brittlest.breaksAtN());
        assertThat(broken.state()).isEqualTo(State.STOP);
        assertThat(found(broken)).isCloseTo(brittlest.breaksAtN(), within(1e-3));
        assertThat(limitValue(broken)).isCloseTo(1.01 * brittlest.breaksAtN(), within(1e-3));
    }

    private static Finding judged(double stiffness, double strength) {
        return only(
                RULE,
                Mounted.car()
                        .with("mount.loads.stiffness", stiffness + " N")
                        .with("mount.loads.strength", strength + " N"));
    }

    private static PartState weakest(MountState mount, java.util.function.ToDoubleFunction<PartState> by) {
        return mount.parts().stream().min(Comparator.comparingDouble(by)).orElseThrow();
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
