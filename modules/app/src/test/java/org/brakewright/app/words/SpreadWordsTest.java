package org.brakewright.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.analysis.tolerance.Spread;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.brakewright.analysis.tolerance.Spread.Quantiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadWordsTest {
    /** A rear that comes first "above 0.00 g" comes first always, and is told so. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0    | 0.45 | 0.2  | at every deceleration in the worst of them and only above 0.45 g in the best (0.20 g as",
                "0    | 0    | 0    | at every deceleration (at every one as",
                "0.30 | 0.45 | 0.40 | above 0.30 g to 0.45 g (0.40 g as"
            })
    void whereTheRearComesFirst(double p05, double p95, double nominal, String said) {
        double middle = (p05 + p95) / 2;
        Spread spread = new Spread(
                Measure.CRITICAL_DECELERATION,
                "driver alone",
                nominal,
                new Quantiles(p05, middle, middle, middle, p95),
                0,
                null,
                null,
                List.of(),
                0);
        assertThat(new SpreadWords(new Show(UnitSystem.METRIC)).sentence(spread))
                .contains("with driver alone the rear comes first " + said + " the file stands)");
    }
}
