package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.dynamics.SlippingCar.Moment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlippingCarTest {
    private static final double FOOT = 0.3048;
    private static final double PEAK = 0.1;

    @Test
    void holdsThePage() {
        WorkedExample page = WorkedExample.of("slipping-car");
        SlipCurve curve = SlipCurve.of(page.si("peak slip"), page.si("sliding share"));
        AxleLoads loads =
                new AxleLoads(page.si("front load"), page.si("rear load"), page.si("wheelbase"), page.si("height"));
        SlippingCar car = new SlippingCar(
                loads,
                AirForces.NONE,
                1,
                axle(page.si("grip"), loads.frontStatic(), curve),
                axle(page.si("grip"), loads.rearStatic(), curve));
        Moment moment = car.settled(20, page.si("front slip"), page.si("rear slip"));
        page.holds("front force", moment.frontForce());
        page.holds("rear force", moment.rearForce());
        page.holds("deceleration", moment.deceleration());
    }

    /**
     * T. Bevan, The Theory of Machines, ch. 8, example 6 (VERIFIED): stopping distance from 30 mph with the rear, the front
     * and all wheels at their grip; the wheels without brakes roll freely. The book's g is 32.2 ft/s2, ours comes in through
     * the mass, so distances are compared at that g.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0, 1, 530",
        "0.1, 1, 0, 699",
        "0.1, 1, 1, 301",
        "0.6, 0, 1, 97.5",
        "0.6, 1, 0, 104",
        "0.6, 1, 1, 50.1"
    })
    void stopsAsInTheBook(double grip, double front, double rear, double feet) {
        double wheelbase = 9.5 * FOOT;
        double weight = 10_000; // any: the distance does not depend on it
        AxleLoads loads = new AxleLoads(weight * 4 / 9.5, weight * 5.5 / 9.5, wheelbase, 2 * FOOT);
        SlipCurve curve = SlipCurve.of(PEAK, 0.8);
        SlippingCar car = new SlippingCar(
                loads,
                AirForces.NONE,
                1,
                axle(grip, loads.frontStatic(), curve),
                axle(grip, loads.rearStatic(), curve));
        double deceleration = car.settled(10, front * PEAK, rear * PEAK).deceleration();
        double speed = 30 * 1.46667;
        double bookDeceleration = deceleration / Gravity.STANDARD * 32.2;
        assertThat(speed * speed / (2 * bookDeceleration)).isCloseTo(feet, withinPercentage(0.2));
    }

    /** With what {@link AxleLoads} says of the settled deceleration as load moved, the pitched moment is the settled one. */
    @Test
    void settlesWhereThePitchedCarStays() {
        AxleLoads loads = new AxleLoads(6200, 5100, 2.6, 0.55);
        SlipCurve curve = SlipCurve.of(0.12, 0.75);
        SlippingCar car = new SlippingCar(
                loads,
                new AirForces(200, 500, 900),
                50,
                new SlippingAxle(0.3, 2, new LoadSensitiveGrip(1.1, 0.1, 6200), curve),
                new SlippingAxle(0.3, 2, new LoadSensitiveGrip(1.2, 0.15, 5100), curve));
        Moment settled = car.settled(40, 0.08, 1);
        Moment pitched = car.pitched(40, 0.08, 1, car.transfer(settled.deceleration()));
        assertThat(pitched.deceleration()).isCloseTo(settled.deceleration(), within(1e-11));
        double moved = loads.front(settled.deceleration() / Gravity.STANDARD) - loads.frontStatic();
        assertThat(car.transfer(settled.deceleration())).isCloseTo(moved, within(1e-9));
    }

    private static SlippingAxle axle(double grip, double load, SlipCurve curve) {
        return new SlippingAxle(0.3, 2, new LoadSensitiveGrip(grip, 0, load), curve);
    }
}
