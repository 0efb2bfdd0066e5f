package org.brakewright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.app.Cars;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
    private static final String CAR = Cars.file("heavy-tourer").toString();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void writesEachSheetInEveryFormat() throws IOException {
        Path out = folder.resolve("new").resolve("sheets");
        Shell run = Shell.run("sheets", CAR, "--out", out.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("brake-pedal-arm: Meridian heavy tourer: brake pedal arm", "Print at 100 %");
        assertThat(names(out))
                .contains(
                        "brake-pedal-arm-a4.pdf",
                        "brake-pedal-arm-letter.pdf",
                        "brake-pedal-arm.svg",
                        "brake-pedal-arm.dxf");
    }

    @Test
    void aForbiddenSheetIsToldAndTheExitCodeSaysStop() {
        Shell run = Shell.run("sheets", Cars.file("hill-climber").toString(), "--out", folder.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("DO NOT DRIVE SO: Rear wheels lock first");
    }

    @Test
    void titleBlockAndPaperAreAsAskedFor() throws IOException {
        Shell run = Shell.run(
                "sheets", CAR, "--out", folder.toString(), "--paper", "a3", "--owner", "R. Miller", "--date", "May 4");
        assertThat(run.code()).isZero();
        assertThat(names(folder)).contains("brake-pedal-arm-a3.pdf").noneMatch(name -> name.contains("letter"));
        assertThat(Files.readString(folder.resolve("brake-pedal-arm.svg"))).contains("R. Miller", "May 4");
    }

    @Test
    void aFolderThatCannotBeWrittenToIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "");
        Shell run = Shell.run("sheets", CAR, "--out", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(file + " cannot be written to").doesNotContain("\tat ");
    }

    @Test
    void aPaperThatDoesNotExistIsRefused() {
        Shell run = Shell.run("sheets", CAR, "--out", folder.toString(), "--paper", "a7");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--paper", "a7", "A4");
    }

    @Test
    void aFileThatCannotBeUsedIsToldAsByCheck() {
        Path file = Cars.copy(folder, Cars.text("hill-climber", "offset: 0 mm", "offset: 40 mm"));
        Shell run = Shell.run("sheets", file.toString(), "--out", folder.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(Shell.run("check", file.toString()).err());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
