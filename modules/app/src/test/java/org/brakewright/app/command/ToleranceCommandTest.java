package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.brakewright.app.Cars;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ToleranceCommandTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aSentenceComesFirstAndNumbersFollow() {
        Shell run = Shell.run("tolerance", Cars.file("hill-climber").toString(), "--samples", "256");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .startsWith("Kestrel hill-climb car In 9 of 10 cars built like this the pedal needs ")
                .contains(
                        "comes from front brakes: pad friction (", "How often the rear locks first", "256 cars drawn");
    }

    @Test
    void theSeedDecidesAndTheSameSeedRepeats() {
        String file = Cars.file("hill-climber").toString();
        String one = Shell.run("tolerance", file, "--samples", "128", "--seed", "1", "--json")
                .out();
        assertThat(Shell.run("tolerance", file, "--samples", "128", "--json").out())
                .isEqualTo(one);
        assertThat(Shell.run("tolerance", file, "--samples", "128", "--seed", "2", "--json")
                        .out())
                .isNotEqualTo(one);
    }

    @ParameterizedTest
    @ValueSource(strings = {"63", "65537", "-1", "many"})
    void aNumberOfSamplesThatCannotBeIsRefused(String samples) {
        Shell run = Shell.run("tolerance", Cars.file("hill-climber").toString(), "--samples", samples);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("--samples", samples).doesNotContain("\tat ");
    }

    @Test
    void aFileThatCannotBeUsedIsToldAsByCheck() {
        Path file = Cars.copy(folder, Cars.text("hill-climber", "offset: 0 mm", "offset: 40 mm"));
        Shell run = Shell.run("tolerance", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(Shell.run("check", file.toString()).err());
    }
}
