package org.brakewright.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.junit.jupiter.api.Test;

/**
 * A booster in the chain, closed form: crack-in at 100 N, then four times the push, until vacuum times diaphragm times
 * efficiency is used up; then newton for newton. Lever 5 at 0.8.
 */
class BoosterRunOutTest {
    private static final double MASTER_AREA = Math.PI / 4 * 0.02 * 0.02;

    private static final WrittenCar CAR = Cars.TANDEM.with("""
            apply.booster.ratio: 4
            apply.booster.diaphragm_diameter: 200 mm
            apply.booster.vacuum: 0.6 bar
            apply.booster.crack_in_force: 100 N
            apply.booster.efficiency: 0.9
            """);

    private static final double FULL_ASSIST = 0.6e5 * Math.PI / 4 * 0.2 * 0.2 * 0.9;

    /** Pad force at which (4 - 1) times what exceeds the crack-in is all the help there is. */
    private static final double RUN_OUT = (100 + FULL_ASSIST / 3) / (5 * 0.8);

    private static double push(double pedalForce) {
        return Rig.of(CAR).at(pedalForce).frontPressure() * MASTER_AREA;
    }

    @Test
    void belowCrackInTheFootIsAlone() {
        assertThat(push(20)).isCloseTo(80, withinPercentage(1e-9));
    }

    @Test
    void theSlopeIsTheRatioUntilRunOutAndOneBeyond() {
        assertThat(push(RUN_OUT - 10) - push(RUN_OUT - 20)).isCloseTo(10 * 4 * 4, withinPercentage(1e-9));
        assertThat(push(RUN_OUT + 20) - push(RUN_OUT + 10)).isCloseTo(10 * 4, withinPercentage(1e-9));
        assertThat(push(RUN_OUT)).isCloseTo(4 * RUN_OUT + FULL_ASSIST, withinPercentage(1e-9));
    }

    @Test
    void theCurveOfTheChainBendsAtCrackInAndRunOut() {
        assertThat(Rig.of(CAR).curve().bends())
                .anySatisfy(bend -> assertThat(bend.pedalForce()).isCloseTo(25, withinPercentage(1e-9)))
                .anySatisfy(bend -> assertThat(bend.pedalForce()).isCloseTo(RUN_OUT, withinPercentage(1e-9)));
    }

    /** Beyond run-out the effort is counted with the full help and no more. */
    @Test
    void aHardStopBeyondRunOutTakesTheFootsOwnForce() {
        WrittenCar heavy = CAR.with("car.load_cases[0].front_axle: 1500 kg\ncar.load_cases[0].rear_axle: 1500 kg");
        double force = heavy.hardStop().point().pedalForceN();
        assertThat(force).isGreaterThan(RUN_OUT);
        double wanted = 3000 * 0.9 * 9.80665;
        double pushWanted = wanted / 6; // 12,000 N at the tyres for 2,000 N in the master
        assertThat(force).isCloseTo((pushWanted - FULL_ASSIST) / 4, withinPercentage(1e-9));
    }
}
