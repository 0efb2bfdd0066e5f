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

/** Held to analysis at the very forces at which the weld works at its allowed stress. */
class MountWeldsTest {
    private static final MountWelds RULE = new MountWelds();

    @Test
    void fromTooWeakToWhatNobodyCanTell() {
        double holds = found(only(RULE, Mounted.welded()));
        assertThat(judged(0.5 * holds, 0.99 * holds).state()).isEqualTo(State.CANNOT_TELL);
        assertThat(judged(0.5 * holds, 1.01 * holds).state()).isEqualTo(State.CAUTION);
        Finding weak = judged(1.01 * holds, 1.01 * holds);
        assertThat(weak.state()).isEqualTo(State.STOP);
        assertThat(limitValue(weak)).isCloseTo(1.01 * holds, within(1e-3));
    }

    /** Throats carry in proportion to their size; the mesh at the weld follows its leg, hence not to the last digit. */
    @Test
    void twiceTheLegCarriesTwice() {
        TestCar thick = Mounted.welded()
                .with("mount.brackets[0].welds[0].leg", "6 mm")
                .with("mount.brackets[0].welds[1].leg", "6 mm");
        double thin = found(only(RULE, Mounted.welded()));
        assertThat(found(only(RULE, thick))).isCloseTo(2 * thin, within(0.02 * thin));
    }

    private static Finding judged(double function, double stiffness) {
        return only(
                RULE,
                Mounted.welded()
                        .with("mount.loads.function", function + " N")
                        .with("mount.loads.stiffness", stiffness + " N"));
    }

    @Test
    void isSilentOnABoltedBracket() {
        assertThat(Mounted.car().judgedBy(RULE)).isEmpty();
    }

    @Test
    void isSilentWithoutAMount() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
