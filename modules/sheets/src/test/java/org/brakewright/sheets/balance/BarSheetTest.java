package org.brakewright.sheets.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Point;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

/** Sizes as the example's build file gives them: clevises 2-1/2 in apart, rods 96 mm, front clevis 0.5 mm behind. */
class BarSheetTest {
    private static final Drawn DRAWN = Drawn.of(Examples.sheet(Examples.text("hill-climber"), "balance-bar"));

    /** At rest first: bearing, front pin, rear pin. */
    @Test
    void pinsLieAsFarApartAsTheClevises() {
        List<Circle> circles = DRAWN.circles();
        Point front = circles.get(1).centre();
        Point rear = circles.get(2).centre();
        assertThat(front.distance(rear)).isCloseTo(2.5 * 25.4, within(1e-6));
        assertThat(front.y() - rear.y()).isCloseTo(-0.5, within(1e-3));
        Point bearing = circles.getFirst().centre();
        assertThat(bearing.distance(front)).isCloseTo(2.5 * 25.4 / 2, within(1e-6));
    }

    /** Half the lead goes to each rod: the front one is 96 + 0.5/2 mm long, the rear one 96 - 0.5/2 mm. */
    @Test
    void rodsAreAsLongAsTheyAre() {
        Point front = DRAWN.circles().get(1).centre();
        assertThat(DRAWN.lines()).anySatisfy(line -> {
            assertThat(line.from()).isEqualTo(front);
            assertThat(line.from().distance(line.to())).isCloseTo(96.25, within(0.001));
        });
    }

    @Test
    void theTableSaysWhatOneTurnDoes() {
        assertThat(DRAWN.words()).contains("one turn of the adjuster changes the share by", "1.7 % of the push");
    }
}
