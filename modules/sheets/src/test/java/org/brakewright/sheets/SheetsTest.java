package org.brakewright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.drawing.Drawing;
import org.brakewright.findings.Assess;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetsTest {
    private static final String CAR = Examples.text("hill-climber");

    /** The example's rear axle locks first, a stop whose inputs begin with the bar's offset; its rods are fine. */
    @Test
    void stampsWhatAStopFindingForbidsAndNothingElse() {
        Sheet bar = Examples.sheet(CAR, "balance-bar");
        assertThat(bar.forbidden()).isTrue();
        assertThat(bar.drawings())
                .extracting(Drawing::stamp)
                .allSatisfy(stamp -> assertThat(stamp).startsWith("DO NOT DRIVE SO: rear_locks_first"));
        assertThat(Drawn.of(bar).words()).contains("What forbids it", "A stop: rear_locks_first.");
        assertThat(Examples.sheet(CAR, "brake-pushrods").forbidden()).isFalse();
    }

    @Test
    void stampsTheRodThatAClevisDoesNotHold() {
        String loose = CAR.replace("clevis_thread: 14 mm", "clevis_thread: 6 mm");
        assertThat(Examples.sheet(loose, "brake-pushrods").drawing().stamp()).isEqualTo("DO NOT CUT: rod_thread");
    }

    @Test
    void numbersSheetsAndNamesTheirOwner() {
        List<Sheet> sheets = Examples.sheets(CAR);
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            assertThat(sheet.drawings()).extracting(Drawing::title).allSatisfy(title -> {
                assertThat(title.number()).isEqualTo("kestrel-hill-climb-car-" + sheet.key());
                assertThat(title.owner()).isEqualTo("Demo workshop");
                assertThat(title.issued()).isEqualTo("2026-11-26");
            });
            assertThat(sheet.drawing().title().sheet()).isEqualTo((i + 1) + " of " + sheets.size());
        }
        assertThat(sheets).extracting(Sheet::key).doesNotHaveDuplicates();
    }

    @Test
    void everySheetSaysWhatMustNeverBeDriven() {
        for (String car : Examples.ALL) {
            assertThat(Examples.sheets(Examples.text(car)))
                    .allSatisfy(
                            sheet -> assertThat(String.join(" ", Drawn.of(sheet).words()))
                                    .contains("Never drive with", "check bars"));
        }
    }

    @Test
    void aCarWithoutTheirDataHasNoSuchSheets() {
        assertThat(Examples.sheets(Examples.text("shop-pickup")))
                .extracting(Sheet::key)
                .doesNotContain("balance-bar", "brake-pushrods", "brake-pedal-arm");
    }

    /** What is left out for drawings, cures and advice, changes no judgement. */
    @ParameterizedTest
    @ValueSource(strings = {"heavy-tourer", "hill-climber", "shop-pickup"})
    void aCarAssessedForDrawingsIsForbiddenTheSame(String car) {
        assertThat(stops(Examples.assessed(Examples.text(car), Assess::forDrawings)))
                .isEqualTo(stops(Examples.assessed(Examples.text(car))));
    }

    private static List<String> stops(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.state() == State.STOP)
                .map(finding -> finding.key() + " " + finding.subject() + " " + finding.inputs())
                .toList();
    }
}
