package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StopTest {
    /** 1e-6 relative: agreement wanted with an independent computation. */
    private static final double RECOMPUTED = 1e-4;

    /** g of the rows in feet and pounds, ft/s2. */
    private static final double FEET_G = 32.2;

    /**
     * Row A1, FROM MEMORY: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example problem 1. Light truck of 3,635 lb from 88 ft/s
     * under 2,000 lb; feet, pounds, slugs.
     */
    @Test
    void stopsTheLightTruckOfA1() {
        double mass = 3635 / FEET_G;
        double speed = 88;
        double deceleration = 2000 / mass;
        double horsepower = 550;
        agrees(deceleration, 17.71664374140303, 17.72, 0.005);
        agrees(StoppingDistance.distance(speed, deceleration), 218.55155279503103, 218.6, 0.05);
        // The book's 4.966 s is one unit of its last digit off the unrounded quotient.
        agrees(StoppingDistance.time(speed, deceleration), 4.967080745341614, 4.966, 0.0015);
        agrees(StoppingDistance.energy(mass, speed), 437103.1055900621, 437100, 50);
        agrees(StoppingDistance.power(2000, speed) / horsepower, 320, 320, 0.5);
        agrees(StoppingDistance.meanPower(mass, speed, deceleration) / horsepower, 160, 160, 0.5);
    }

    /**
     * Row A3, VERIFIED: T. Bevan, The Theory of Machines, ch. 8, example 6. Wheelbase 9.5 ft, CG 2 ft high and 4 ft ahead of the rear
     * axle, 30 mph at 1.46667 ft/s per mph. Per grip: distances in ft with rear, front, all wheels; load ratio front over rear; then as printed.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1, 530.1887453443533 698.9472764011256 300.62248447360236 0.7924528301886793, 530 699 301 0.792",
        "0.6, 97.47456314750139 103.96527588045419 50.103747412267076 1.2093023255813955, 97.5 104 50.1 1.21"
    })
    void brakesOneAxleOrAllOfA3(double grip, String recomputed, String published) {
        AxleLoads car = new AxleLoads(4, 5.5, 9.5, 2);
        double[] found = {
            feet(OneAxleBraked.rearOnly(car, grip)),
            feet(OneAxleBraked.frontOnly(car, grip)),
            feet(OneAxleBraked.allWheels(car, grip)),
            car.front(grip) / car.rear(grip)
        };
        for (int i = 0; i < found.length; i++) {
            String printed = published.split(" ", -1)[i];
            int point = printed.indexOf('.');
            double halfDigit = 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - printed.length());
            agrees(found[i], Double.parseDouble(recomputed.split(" ", -1)[i]), Double.parseDouble(printed), halfDigit);
        }
    }

    /** Row A7, VERIFIED: T. H. Wentzell, Machine Design, example 16.4. 40,000 lb on ten wheels of 36 in from 60 mph in 400 ft. */
    @Test
    void stopsTheTenWheelsOfA7() {
        double deceleration = StoppingDistance.deceleration(88, 400);
        double torque = new RollingWheel(18).torque(40000 / FEET_G * deceleration) / 10;
        agrees(deceleration, 9.68, 9.68, 0.005);
        agrees(torque, 21644.720496894406, 21644.72, 0.005);
        agrees(torque / (0.4 * 10), 5411.1801242236015, 5411.18, 0.005);
    }

    /** Row A10, VERIFIED: R. S. Khurmi, J. K. Gupta, Theory of Machines, example 2.1. 90 km/h to rest in 5 s takes 62.5 m. */
    @Test
    void brakesTheCarOfA10() {
        double speed = 90 / 3.6;
        double deceleration = speed / 5;
        assertThat(StoppingDistance.time(speed, deceleration)).isCloseTo(5, within(1e-12));
        agrees(StoppingDistance.distance(speed, deceleration), 62.5, 62.5, 0.05);
    }

    /** Row D1, VERIFIED: T. H. Wentzell, Machine Design, example 16.5. 3,500 lb from 73 ft/s at 20 ft/s2; the book rounds the time to 3.7 s. */
    @Test
    void stopsTheCarOfD1() {
        double mass = 3500 / FEET_G;
        agrees(StoppingDistance.energy(mass, 73), 289619.5652173913, 289619.57, 0.005);
        double time = StoppingDistance.time(73, 20);
        assertThat(time).isCloseTo(3.65, within(1e-12));
        double power = StoppingDistance.meanPower(mass, 73, 20) / 550;
        agrees(power, 144.2688245, 144.269, 0.0005);
        assertThat(power * time / 3.7).isCloseTo(142.32, within(0.005));
    }

    /** Row D2, VERIFIED: U. C. Jindal, Machine Design, example 23-5. 1,100 kg from 65 km/h in 4 s, 10 % in turning parts, four wheels of 220 mm. */
    @Test
    void stopsTheCarOfD2() {
        double speed = 65 / 3.6;
        double distance = StoppingDistance.distance(speed, speed / 4);
        agrees(distance, 36.11111111111111, 36.11, 0.005);
        double energy = StoppingDistance.energy(1.1 * 1100 / 4, speed);
        agrees(energy, 49307.96682, 49307.97, 0.005);
        agrees(new RollingWheel(0.22).torque(energy / distance), 300.3993056, 300.4, 0.05);
    }

    /**
     * FMVSS 135 and UN R13-H as given in standards sections 1.2 and 3.3 (coefficients from memory; arithmetic checked there): limit in m at
     * 100 km/h and the steady deceleration the quadratic term stands for, as printed.
     */
    @ParameterizedTest
    @CsvSource({
        "0.0060, 70, 6.43",
        "0.0067, 77, 5.76",
        "0.0075, 85, 5.14",
        "0.0100, 110, 3.86",
        "0.0158, 168, 2.44",
        "0.0079, 89, 4.88",
        "0.0080, 90, 4.82"
    })
    void regulationCurvesImplyTheirDeceleration(double quadratic, double distance, double deceleration) {
        assertThat(StoppingDistance.regulation(100, quadratic)).isCloseTo(distance, within(1e-9));
        double implied = StoppingDistance.impliedDeceleration(quadratic);
        assertThat(implied).isCloseTo(deceleration, within(0.005));
        // Closed form: the quadratic term alone is the distance of a steady stop.
        assertThat(StoppingDistance.distance(100 / 3.6, implied)).isCloseTo(quadratic * 1e4, within(1e-9));
    }

    /** Closed form: with no delay it is the plain stop; dead time adds speed times time; a slow ramp stops within itself. */
    @Test
    void lateBrakesCostDistance() {
        assertThat(StoppingDistance.distance(20, 5, 0, 0)).isEqualTo(StoppingDistance.distance(20, 5));
        assertThat(StoppingDistance.distance(20, 5, 0.5, 0)).isCloseTo(50, within(1e-12));
        assertThat(StoppingDistance.distance(20, 5, 0, 0.6)).isCloseTo(integrated(20, 5, 0.6), within(1e-4));
        assertThat(StoppingDistance.distance(2, 5, 0, 4)).isCloseTo(integrated(2, 5, 4), within(1e-4));
        // Both branches meet where the ramp just ends at rest: v = a t / 2.
        assertThat(StoppingDistance.distance(2.5 - 1e-12, 5, 0, 1))
                .isCloseTo(StoppingDistance.distance(2.5 + 1e-12, 5, 0, 1), within(1e-9));
    }

    @Test
    void refusesNoBrakingAtAll() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StoppingDistance.distance(20, 0))
                .withMessageContaining("deceleration");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StoppingDistance.distance(-20, 5))
                .withMessageContaining("speed")
                .withMessageContaining("-20.0");
    }

    /** Steps of 1e-6 s with the midpoint of the ramp: error far below 1e-4 m. */
    private static double integrated(double start, double steady, double ramp) {
        double step = 1e-6;
        double speed = start;
        double distance = 0;
        for (int i = 0; speed > 0; i++) {
            double change = Math.min(1, (i + 0.5) * step / ramp) * steady * step;
            distance += (speed - change / 2) * step;
            speed -= change;
        }
        return distance;
    }

    private static double feet(double decelerationG) {
        return StoppingDistance.distance(30 * 1.46667, decelerationG * FEET_G);
    }

    private static void agrees(double found, double recomputed, double published, double halfDigit) {
        assertThat(found).isCloseTo(recomputed, withinPercentage(RECOMPUTED));
        assertThat(found).isCloseTo(published, within(halfDigit));
    }
}
