package org.brakewright.analysis.stop;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.heat.HotCars;
import org.brakewright.kernel.thermal.GreyIron;
import org.brakewright.model.vehicle.AxleEnd;
import org.junit.jupiter.api.Test;

/** Discs along a stop: 1,000 kg, front share 2/3, discs of 5 kg. */
class StopHeatTest {
    private static final double AIR = 293.15;

    private static final WrittenCar CAR = HotCars.STOP.with("""
            stops.speed: 30 m/s
            stops.rise: 0.2 s
            stops.slippery_grip: 0.3
            stops.peak_slip: 0.1
            stops.sliding_share: 0.8
            stops.front_wheel_inertia: 0.6 kg m2
            stops.rear_wheel_inertia: 0.6 kg m2
            """);

    private static Stop at(WrittenCar car, double deceleration) {
        Rig rig = Rig.of(car);
        double force = rig.curve().pedalForce(1000 * deceleration).orElseThrow();
        return Stops.one(rig.build(), rig.curve(), StopKind.HARD, force);
    }

    private static double stored(double rise) {
        return 5 * (GreyIron.heat(AIR + rise) - GreyIron.heat(AIR));
    }

    /**
     * Closed form of a single stop (Limpert, Brake Design and Safety, ch. 3, from memory): the disc takes the braking energy of its
     * wheel. Here 3.5 % of it and less go past the brakes by slip, up to a tenth into linings, and a little to the air.
     */
    @Test
    void takesTheEnergyOfTheCar() {
        Stop stop = at(CAR, 4);
        double ofOneFront = 0.5 * 1000 * 900 * 2 / 3 / 2;
        double ofOneRear = 0.5 * 1000 * 900 * 1 / 3 / 2;
        assertThat(stored(requireNonNull(stop.frontRotorRiseK()))).isBetween(0.85 * ofOneFront, ofOneFront * 1.01);
        assertThat(stored(requireNonNull(stop.rearRotorRiseK()))).isBetween(0.85 * ofOneRear, ofOneRear * 1.01);
    }

    /** Closed form: with the same discs the rises are as the brake forces, 2 to 1. */
    @Test
    void sharesTheHeatAsTheForces() {
        Stop stop = at(CAR, 4);
        assertThat(stored(requireNonNull(stop.frontRotorRiseK())))
                .isCloseTo(2 * stored(requireNonNull(stop.rearRotorRiseK())), withinPercentage(4));
    }

    /** A rotor never cools while its brake works and turns, and begins at the temperature of the air. */
    @Test
    void warmsUpAlongTheStop() {
        Stop stop = at(CAR, 4);
        assertThat(stop.samples().getFirst().frontRotorK()).isEqualTo(AIR);
        assertThat(stop.samples().stream().map(StopSample::frontRotorK).toList())
                .isSorted();
    }

    /** A locked wheel does not turn in its brake: no work, no heat; the disc only cools. */
    @Test
    void heatsNoDiscOfALockedWheel() {
        Stop stop = at(CAR, 14);
        double lock = requireNonNull(stop.frontLockS());
        double before = stop.samples().stream()
                .filter(sample -> sample.timeS() >= lock)
                .findFirst()
                .map(StopSample::frontRotorK)
                .orElseThrow();
        assertThat(requireNonNull(stop.samples().getLast().frontRotorK())).isLessThanOrEqualTo(before);
        assertThat(requireNonNull(stop.frontRotorRiseK()))
                .isLessThan(0.5 * requireNonNull(at(CAR, 4).frontRotorRiseK()));
    }

    /** With its circuit open a brake stays at the temperature of the air. */
    @Test
    void leavesTheFailedAxleCold() {
        Rig rig = Rig.of(CAR);
        Stop stop = Stops.one(rig.build(), ChainCurve.of(rig.chain().failed(AxleEnd.REAR)), StopKind.REAR_OUT, 300);
        assertThat(requireNonNull(stop.rearRotorRiseK())).isZero();
        assertThat(requireNonNull(stop.frontRotorRiseK())).isGreaterThan(20);
    }

    /** Where the build says nothing of heat, nothing is said. */
    @Test
    void saysNothingWithoutTheBuildersHeat() {
        Stop stop = at(StopsTest.CAR, 4);
        assertThat(stop.frontRotorRiseK()).isNull();
        assertThat(stop.samples().getLast().rearRotorK()).isNull();
    }
}
