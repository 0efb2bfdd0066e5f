package org.brakewright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.app.Cars;
import org.brakewright.app.Refresh;
import org.brakewright.app.Shell;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the examples print, byte for byte. The files are frozen after a person has read them: they hold the wording and
 * the numbers still, while the tests of kernel and analysis hold the numbers against the world outside.
 */
class GoldenFilesTest {
    @ParameterizedTest
    @CsvSource({
        "hill-climber, check.txt,",
        "hill-climber, check.json, --json",
        "hill-climber, check-us.txt, --units us",
        "shop-pickup, check.txt,",
        "shop-pickup, check.json, --json",
        "heavy-tourer, check.txt,",
        "heavy-tourer, check.json, --json",
        "hill-climber, tolerance.txt, --samples 1024",
        "shop-pickup, tolerance-us.txt, --samples 1024 --units us"
    })
    void theExamplePrintsWhatWasRead(String car, String file, @org.jspecify.annotations.Nullable String options) {
        String command = file.split("[.-]", -1)[0];
        List<String> arguments =
                new java.util.ArrayList<>(List.of(command, Cars.file(car).toString()));
        if (options != null) {
            arguments.addAll(List.of(options.split(" ", -1)));
        }
        Shell run = Shell.run(arguments.toArray(String[]::new));
        Refresh.file(Cars.expected(car, file), run.out());
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .as(file + " of " + car + " " + Refresh.HOW)
                .isEqualTo(Cars.read(Cars.expected(car, file)));
    }
}
