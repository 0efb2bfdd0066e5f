package org.brakewright.sheets.pedal;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

/**
 * The example's rods by hand: 96 mm from pin to piston, clevis 22 mm with 14 mm of thread for 5/16 in = 7.9375 mm. Screwed in
 * by (1.5 x 7.9375 + 14)/2 = 12.953, cut to 96 - 22 + 12.953 = 86.953, thread 14 + 5 + 1.06 = 20.06 mm.
 */
class RodSheetTest {
    @Test
    void saysWhereToCutTwoRods() {
        assertThat(Drawn.of(Examples.sheet(Examples.text("hill-climber"), "brake-pushrods"))
                        .words())
                .contains(
                        "cut the rod to",
                        "87.0 mm (3.423 in)",
                        "20.1 mm (0.790 in)",
                        "13.0 mm (0.510 in)",
                        "1.0 mm (0.041 in)",
                        "2");
    }
}
