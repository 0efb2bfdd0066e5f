package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Row A2, FROM MEMORY, answers recomputed: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example problem 2.
 * Its brake gains of 20 and 14 in lb/psi are here discs of 2 mu A r_e = 20 and 14 in3.
 */
class ProportionedTruckTest {
    private static final double INCH = 0.0254;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double PSI = 6894.757293168;

    /** 5e-6 relative: half a step of the sixth digit that the check values print. */
    private static final Percentage PRINTED = withinPercentage(5e-4);

    private static final WrittenCar TRUCK =
            Cars.TANDEM.with("""
            car.wheelbase: 108.5 in
            car.front_tyre_radius: 12.11 in
            car.rear_tyre_radius: 12.11 in
            car.load_cases[0].front_axle: 2210 lb
            car.load_cases[0].rear_axle: 1864 lb
            car.load_cases[0].cg_height: 20.25 in
            front.pistons[0]: 2.5 in
            front.pad_friction: 0.5
            rear.pistons[0]: 2.5 in
            rear.pad_friction: 0.5
            apply.bore: 1 in
            pedal.ratio: 4
            apply.proportioning_valve.knee: 290 psi
            apply.proportioning_valve.slope: 0.3
            """).with("front.effective_radius", radius(20)).with("rear.effective_radius", radius(14));

    @ParameterizedTest
    @CsvSource({
        "100, 100, 330.306, 231.214, 0.13783,  0.142693, 0.131431, 0.96592",
        "200, 200, 660.611, 462.428, 0.27566,  0.273025, 0.279514, 0.986213",
        "300, 293, 990.917, 677.457, 0.409517, 0.393006, 0.436331, 0.938548",
        "400, 323, 1321.22, 746.821, 0.50762,  0.508951, 0.505282, 0.997384",
        "500, 353, 1651.53, 816.185, 0.605722, 0.618419, 0.581562, 0.979469",
        "600, 383, 1981.83, 885.549, 0.703825, 0.721938, 0.666406, 0.97491",
        "700, 413, 2312.14, 954.913, 0.801927, 0.81998,  0.761342, 0.977984"
    })
    void theTableOfAppliedPressuresComesOut(
            double applied,
            double rear,
            double frontForce,
            double rearForce,
            double g,
            double frontAdhesion,
            double rearAdhesion,
            double efficiency) {
        OperatingPoint point = Rig.of(TRUCK).pushed(pedalForce(applied));
        assertThat(point.frontPressurePa() / PSI).isCloseTo(applied, withinPercentage(1e-9));
        assertThat(point.rearPressurePa() / PSI).isCloseTo(rear, withinPercentage(1e-9));
        assertThat(point.frontForceN() / POUND_FORCE).isCloseTo(frontForce, PRINTED);
        assertThat(point.rearForceN() / POUND_FORCE).isCloseTo(rearForce, PRINTED);
        assertThat(point.decelerationG()).isCloseTo(g, PRINTED);
        assertThat(point.frontAdhesion()).isCloseTo(frontAdhesion, PRINTED);
        assertThat(point.rearAdhesion()).isCloseTo(rearAdhesion, PRINTED);
        assertThat(point.efficiency()).isCloseTo(efficiency, PRINTED);
    }

    /**
     * From (psi - Phi)/chi on, where a split of 20 to 14 meets the ideal curve, to where the valve has brought the rear
     * back, and again beyond 1 g, where the ideal curve falls below the valve's straight line. The ends are found here by
     * bisection in the book's own units.
     */
    @Test
    void theRearIsAheadFromBelowTheKneeUntilTheValveHasWorked() {
        LoadCaseResult result = TRUCK.loadCase();
        double start = (1864.0 / 4074 - 14.0 / 34) / (20.25 / 108.5);
        assertThat(result.criticalDecelerationG()).isCloseTo(start, withinPercentage(1e-9));
        assertThat(result.rearFirst()).hasSize(2);
        RearFirst first = result.rearFirst().getFirst();
        assertThat(first.fromG()).isCloseTo(start, withinPercentage(1e-9));
        assertThat(first.toG()).isCloseTo(decelerationG(sameAdhesion(400, 300)), withinPercentage(1e-9));
        RearFirst second = result.rearFirst().getLast();
        assertThat(second.fromG()).isCloseTo(decelerationG(sameAdhesion(700, 1200)), withinPercentage(1e-9));
        assertThat(second.toG()).isNull();
    }

    /** Pressure at which both axles use the same grip, between one with the front and one with the rear ahead. */
    private static double sameAdhesion(double frontAhead, double rearAhead) {
        double front = frontAhead;
        double rear = rearAhead;
        for (int i = 0; i < 60; i++) {
            double middle = (front + rear) / 2;
            if (rearAdhesion(middle) > frontAdhesion(middle)) {
                rear = middle;
            } else {
                front = middle;
            }
        }
        return rear;
    }

    private static double radius(double gain) {
        return gain / (2 * 0.5 * Math.PI / 4 * 2.5 * 2.5) * INCH;
    }

    private static double pedalForce(double psi) {
        return psi * Math.PI / 4 * POUND_FORCE / (4 * 0.8);
    }

    private static double front(double psi) {
        return 2 * 20 * psi / 12.11;
    }

    private static double rear(double psi) {
        return 2 * 14 * (290 + 0.3 * (psi - 290)) / 12.11;
    }

    private static double decelerationG(double psi) {
        return (front(psi) + rear(psi)) / 4074;
    }

    private static double frontAdhesion(double psi) {
        return front(psi) / (2210 + 20.25 / 108.5 * 4074 * decelerationG(psi));
    }

    private static double rearAdhesion(double psi) {
        return rear(psi) / (1864 - 20.25 / 108.5 * 4074 * decelerationG(psi));
    }
}
