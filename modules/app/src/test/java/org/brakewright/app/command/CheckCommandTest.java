package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakewright.app.Cars;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    private static final String TOURER = "heavy-tourer";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theVerdictComesFirstThenFindingsThenTables() {
        String out = Shell.run("check", Cars.file("hill-climber").toString()).out();
        assertThat(out.lines().limit(3)).containsExactly("Kestrel hill-climb car", "", "STOP");
        assertThat(out)
                .containsSubsequence(
                        "\nSTOP\n",
                        "\nStop: Rear wheels lock first\n",
                        "\nCaution: ",
                        "\nCannot tell: ",
                        "\nFine: ",
                        "\nAt each deceleration, driver only\n",
                        "\nWhat locks first, driver only\n",
                        "\nWith something failed or weak, at 500 N\n",
                        "\nWhat to measure next ");
    }

    @Test
    void aStopFindingGivesOne() {
        assertThat(Shell.run("check", Cars.file("hill-climber").toString()).code())
                .isEqualTo(1);
    }

    /** What the cures of its first stops ask for: six turns of 1.06 mm, and a stop under the clutch pedal. */
    @Test
    void noStopFindingGivesZero() {
        String cured = Cars.text("hill-climber", "offset: 0 mm (measured)", "offset: 6.36 mm")
                .replace("travel_to_stop: 135 mm", "travel_to_stop: 118 mm");
        Shell run = Shell.run("check", Cars.copy(folder, cured).toString());
        assertThat(run.out()).doesNotContain("Stop:");
        assertThat(run.code()).isZero();
    }

    @Test
    void nothingThatIsPipedHasColours() {
        for (String units : new String[] {"metric", "us", "US"}) {
            assertThat(Shell.run("check", Cars.file(TOURER).toString(), "--units", units)
                            .out())
                    .doesNotContain("\u001b")
                    .isNotEmpty();
        }
    }

    @Test
    void aMissingFileIsTold() {
        refused(folder.resolve("none.yaml"), "There is no such file.");
    }

    @Test
    void aFolderIsTold() {
        refused(folder, "This is a folder, not a build file.");
    }

    @Test
    void aHugeFileIsTold() {
        refused(Cars.copy(folder, "#".repeat((1 << 20) + 1)), "The file is larger than 1 MiB, which no build file is.");
    }

    @Test
    void aFileInAnotherAlphabetIsTold() throws IOException {
        Path file = folder.resolve("latin.yaml");
        Files.write(file, Cars.text(TOURER).replace("Meridian", "M\u00e9ridien").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused(file, "UTF-8").err()).contains("saved as UTF-8");
    }

    @Test
    void anEmptyFileIsTold() {
        refused(Cars.copy(folder, ""), "allowed: ");
    }

    /** Place, key path, value and what is allowed, of each fault. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "grip: 0.9 | grip: 9 | :13:9  car.grip | written: 9",
                "wheelbase: 2745 mm (measured) | wheelbase: 2745 kg | :10:14  car.wheelbase | 2745 kg",
                "free_play: 4 mm (measured) | free_play: four mm | :54:14  pedal.free_play | four mm",
                "kind: tandem_master | kind: tandem | :58:9  apply.kind | tandem",
                "fluid: | fluids: | :73:1  fluids | fluids",
                "use: road | use: road, | :122:8  intent.use | use"
            })
    void aFaultIsToldWithItsPlace(String from, String to, String place, String value) {
        Path file = Cars.copy(folder, Cars.text(TOURER, from, to));
        assertThat(refused(file, "").err()).contains(file + place).contains(value);
    }

    @Test
    void allFaultsAreToldAtOnce() {
        String text = Cars.text(TOURER, "grip: 0.9", "grip: 9")
                .replace("free_play: 4 mm (measured)", "free_play: four mm")
                .replace("grade: dot_4", "grade: dot_9");
        assertThat(refused(Cars.copy(folder, text), "3 problems").err())
                .contains("car.grip", "pedal.free_play", "fluid.grade");
    }

    /** Each value is allowed by itself and they cannot be true together. */
    @Test
    void aContradictionIsToldWithItsPlace() {
        Path file = Cars.copy(
                folder, Cars.text(TOURER, "      axle_lift:\n", "      cg_height: 600 mm\n      axle_lift:\n"));
        assertThat(refused(file, "given twice").err())
                .contains(file + ":19:18  car.load_cases[0].cg_height", "allowed: keep one of");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: [",
                "a: b: c",
                "\t- x",
                "- 1\n- 2\n",
                "&a *a",
                "!!binary x",
                "%YAML 9",
                "a: 1\na: 2\n",
                "\u0000"
            })
    void whatIsNoBuildFileIsToldWithoutAStackTrace(String text) {
        assertThat(refused(Cars.copy(folder, text), "").err()).containsPattern("car\\.yaml:\\d+:\\d+");
    }

    /** Each fault of the log by its own line, and all of them with the key that names the file. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1817.50, | 1827.50, | line 23: the log has a gap of 10.3 s",
                "1817.50, | 1807.50, | line 23: the lines are not in the order of time",
                "1817.50, | 1817.50,- | line 23: the speed is below zero",
                "time [s] | time | line 2: the heading of the time says no unit of time"
            })
    void aLogThatHidesSomethingIsTold(String from, String to, String message) throws IOException {
        Path file = Cars.copy(folder, Cars.text(TOURER));
        String log = Cars.read(Cars.file(TOURER).resolveSibling("drive.csv"));
        Files.writeString(folder.resolve("drive.csv"), Cars.replaced(log, from, to));
        assertThat(refused(file, "drive.csv, " + message).err()).contains("heat.schedules[0].file");
    }

    @Test
    void aMissingLogIsTold() throws IOException {
        Path file = Cars.copy(folder, Cars.text(TOURER));
        Files.delete(folder.resolve("drive.csv"));
        assertThat(refused(file, "there is no file `drive.csv` in the folder of the build file")
                        .err())
                .contains("heat.schedules[0].file.name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../drive.csv", "/etc/hosts", "sub/../../drive.csv"})
    void aLogOutsideTheFolderIsNotRead(String name) {
        Path file = Cars.copy(folder, Cars.text(TOURER, "name: drive.csv", "name: " + name));
        refused(file, "lies outside the folder of the build file");
    }

    @Test
    void aFolderIsNoLog() throws IOException {
        Files.createDirectory(folder.resolve("logs.csv"));
        refused(Cars.copy(folder, Cars.text(TOURER, "name: drive.csv", "name: logs.csv")), "`logs.csv` is a folder");
    }

    private static Shell refused(Path file, String reason) {
        Shell run = Shell.run("check", file.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("This build file cannot be used yet: ")
                .contains(file.toString(), reason)
                .doesNotContain("\tat ", "Exception", "should not have happened");
        return run;
    }
}
