package org.brakewright.sheets.pedal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.drawing.Circle;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

class ArmSheetTest {
    private static final String CAR = Examples.text("heavy-tourer");
    private static final Drawn DRAWN = Drawn.of(Examples.sheet(CAR, "brake-pedal-arm"));

    /** The build file's own numbers: pin from the pivot, forward and up. */
    @Test
    void theCrossesLieWhereTheBuildFileSays() {
        Circle pivot = DRAWN.circles().getFirst();
        Circle pin = DRAWN.circles().get(1);
        assertThat(pin.centre().x() - pivot.centre().x()).isCloseTo(value("pin_forward"), within(1e-6));
        assertThat(pin.centre().y() - pivot.centre().y()).isCloseTo(value("pin_up"), within(1e-6));
    }

    private static double value(String key) {
        int from = CAR.indexOf(key + ": ") + key.length() + 2;
        return Double.parseDouble(CAR.substring(from, CAR.indexOf(" mm", from)));
    }
}
