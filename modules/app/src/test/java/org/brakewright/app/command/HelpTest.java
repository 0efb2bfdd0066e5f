package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.app.Cars;
import org.brakewright.app.Shell;
import org.brakewright.buildfile.FormatSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
    @ParameterizedTest
    @ValueSource(strings = {"check", "tolerance", "sheets", "open", "demo", "set", "schema"})
    void everyCommandShowsExamplesOfItself(String command) {
        Shell run = Shell.run(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Usage: brakewright " + command, "Examples:", "\n  brakewright " + command)
                .doesNotContain("\u001b");
    }

    @Test
    void theProgramShowsItsCommandsExamplesAndExitCodes() {
        Shell run = Shell.run("--help");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("check", "tolerance", "sheets", "open", "demo", "set", "schema", "Examples:", "Exit codes: 0")
                .doesNotContain("warm");
        assertThat(Shell.run().out()).isEqualTo(run.out());
    }

    @Test
    void theVersionIsTold() {
        assertThat(Shell.run("--version").out()).startsWith("Brakewright ");
    }

    @Test
    void whatIsNotUnderstoodGivesTwoAndTheUsage() {
        assertThat(Shell.run("chek", "x.yaml").code()).isEqualTo(2);
        assertThat(Shell.run("check").code()).isEqualTo(2);
        assertThat(Shell.run("check", "--colour", Cars.file("hill-climber").toString())
                        .err())
                .contains("Usage: brakewright check")
                .doesNotContain("\tat ");
        assertThat(Shell.run("check", Cars.file("hill-climber").toString(), "--units", "imperial")
                        .code())
                .isEqualTo(2);
        assertThat(Shell.run("demo", "--car", "../../x", "--no-browser").err()).contains("hill-climber");
        assertThat(Shell.run("demo", "--car", "tractor", "--no-browser").code()).isEqualTo(2);
    }

    @Test
    void theSchemaOfTheBuildFileIsPrinted() {
        Shell run = Shell.run("schema");
        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).isEqualTo(FormatSchema.json().strip());
    }
}
