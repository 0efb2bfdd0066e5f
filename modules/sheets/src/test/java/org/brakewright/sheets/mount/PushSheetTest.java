package org.brakewright.sheets.mount;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.brakewright.sheets.Measure;
import org.junit.jupiter.api.Test;

/** What is to be expected grows evenly with the push, to what the analysis says for the force in use. */
class PushSheetTest {
    private static final String CAR = Examples.text("hill-climber");

    @Test
    void expectationsGrowEvenlyWithThePush() {
        var words = Drawn.of(Examples.sheet(CAR, "push-and-measure")).words();
        double pad = requireNonNull(Examples.assessed(CAR).analysis().mount())
                .loads()
                .getFirst()
                .padM();
        for (int step = 1; step <= 5; step++) {
            assertThat(words)
                    .contains(step * 100 + " N")
                    .contains(Measure.fixed(Measure.mm(pad * step / 5), 2) + " mm");
        }
    }
}
