package org.brakewright.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.State;
import org.brakewright.findings.rules.RearLocksFirst;
import org.brakewright.model.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingWordsTest {
    /** The written numbers are the given ones rounded half up, with as few decimals from two on as tell them apart. */
    @ParameterizedTest
    @CsvSource({
        "0.89, 1.00, 0.89 g, 1.00 g",
        "0.9951, 1.0049, 0.995 g, 1.005 g",
        "0.9998, 1.0001, 0.9998 g, 1.0001 g",
        "1.0, 1.0, 1.00 g, 1.00 g",
        "0.9999999, 1.0, 1.00 g, 1.00 g"
    })
    void aNumberThatMissesItsLimitByLittleDoesNotReadLikeIt(double found, double limit, String first, String second) {
        Finding finding = Judged.as(State.STOP, new RearLocksFirst())
                .about("driver alone")
                .found(Figure.g(found))
                .against(Figure.g(limit), "the car's grip", Tag.COMMON_PRACTICE)
                .finding();
        FindingWords words = new FindingWords(new Show(UnitSystem.METRIC));
        assertThat(words.sentence(finding)).contains("from " + first + " on, below the " + second + " that");
        assertThat(words.number(finding)).isEqualTo(first);
        assertThat(words.limit(finding)).isEqualTo(second);
    }
}
