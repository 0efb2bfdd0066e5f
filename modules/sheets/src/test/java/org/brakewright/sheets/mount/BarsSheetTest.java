package org.brakewright.sheets.mount;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.brakewright.sheets.Measure;
import org.junit.jupiter.api.Test;

/** The example's braces, their lengths and angles from the points in its build file by the scalar product. */
class BarsSheetTest {
    private static final String CAR = Examples.text("hill-climber");

    @Test
    void lengthsAndAnglesFollowFromTheEndPoints() {
        var words = Drawn.of(Examples.sheet(CAR, "mount-bars")).words();
        double[] brace = {0, -0.130, 0.166};
        double[] stay = {-0.224, 0.130, 0.166};
        assertThat(words)
                .contains(Measure.both(length(brace)), Measure.both(length(stay)))
                .contains(off(brace, 2), off(brace, 1), off(stay, 0), off(stay, 1), off(stay, 2))
                // The panel stands plumb, so the angle to it is what is missing to a right one along the car.
                .contains(Measure.degrees(Math.PI / 2 - Math.acos(0.224 / length(stay))));
    }

    private static double length(double[] way) {
        return Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
    }

    private static String off(double[] way, int axis) {
        return Measure.degrees(Math.acos(Math.abs(way[axis]) / length(way)));
    }
}
