package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.brakewright.app.Cars;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetCommandTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void oneValueChangesAndEveryCommentStays() {
        String before = Cars.text("hill-climber");
        Path file = Cars.copy(folder, before);
        Shell run = Shell.run("set", file.toString(), "car.grip", "0.9 ± 0.1 (assumed)");
        assertThat(run.err()).isEmpty();
        assertThat(file).hasContent(Cars.replaced(before, "1.0 ± 0.1 (assumed) ", "0.9 ± 0.1 (assumed) "));
        assertThat(Cars.read(file)).contains("# dry hill, treaded tyres");
        assertThat(run.out()).startsWith("Stop. ");
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void anEmptyValueRemovesTheKey() {
        String before = Cars.text("hill-climber");
        Path file = Cars.copy(folder, before);
        assertThat(Shell.run("set", file.toString(), "pedal.free_play", "").code())
                .isEqualTo(1);
        assertThat(file).hasContent(Cars.replaced(before, "  free_play: 3 mm (measured)\n", ""));
    }

    @Test
    void aKeyThatWasNotThereIsWrittenWhereItBelongs() {
        Path file = Cars.copy(folder, Cars.text("hill-climber"));
        Shell.run("set", file.toString(), "checks.no_leak", "yes");
        assertThat(Cars.read(file))
                .contains("\nchecks:\n  pushrods_retained: yes\n  pedal_returns: yes\n  no_leak: yes\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pedal.free_play | 3 kg | pedal.free_play",
                "pedal.free_play | -3 mm | pedal.free_play",
                "pedal.springiness | 3 | pedal.springiness",
                "car.wheelbase | '' | car.wheelbase",
                "car.load_cases[7].cg_height | 400 mm | car.load_cases[7].cg_height",
                "pedal. | 3 | pedal.",
                "apply.balance_bar.offset | 40 mm | apply.balance_bar.offset"
            })
    void aRefusalLeavesTheFileAsItWas(String path, String value, String named) {
        String before = Cars.text("hill-climber");
        Path file = Cars.copy(folder, before);
        Shell run = Shell.run("set", file.toString(), path, value);
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(named, "allowed: ").doesNotContain("\tat ");
        assertThat(Cars.read(file)).isEqualTo(before);
    }

    @Test
    void aMissingFileIsToldAndNotMade() {
        Path file = folder.resolve("none.yaml");
        assertThat(Shell.run("set", file.toString(), "pedal.ratio", "5").code()).isEqualTo(2);
        assertThat(file).doesNotExist();
    }
}
