package org.brakewright.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.brakewright.buildfile.Beside;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.model.Build;

/** The example cars, and their sheets in the plainest words. */
public final class Examples {
    public static final List<String> ALL = List.of("heavy-tourer", "hill-climber", "shop-pickup");

    private static final Issue ISSUE = new Issue("Demo workshop", "A. Builder", "2026-11-26");

    private static final Wording KEYS = new Wording() {
        @Override
        public String title(Finding finding) {
            return finding.key();
        }

        @Override
        public String sentence(Finding finding) {
            return "A stop: " + finding.key() + ".";
        }
    };

    private Examples() {}

    /** The build file of an example. */
    public static String text(String name) {
        try {
            return Files.readString(Path.of("..", "..", "examples", name, "car.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Beside.Found beside(String name) {
        try {
            Path file = Path.of("..", "..", "examples", "heavy-tourer", name);
            return new Beside.Found.There(ByteBuffer.wrap(Files.readAllBytes(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The assessment of a build file. */
    public static Assessment assessed(String text) {
        return assessed(text, Assess::assess);
    }

    /** The assessment of a build file by one of the ways to assess. */
    public static Assessment assessed(String text, Function<Build, AssessOutcome> how) {
        return switch (BuildFile.read(text, Examples::beside)) {
            case ReadOutcome.Unusable unusable -> throw new AssertionError(unusable.problems());
            case ReadOutcome.Usable usable ->
                switch (how.apply(usable.build())) {
                    case AssessOutcome.Unusable unusable -> throw new AssertionError(unusable.problems());
                    case AssessOutcome.Assessed assessed -> assessed.assessment();
                };
        };
    }

    /** What keeps a build file from being assessed: "path value". */
    public static List<String> problems(String text) {
        return switch (BuildFile.read(text, Examples::beside)) {
            case ReadOutcome.Unusable unusable -> throw new AssertionError(unusable.problems());
            case ReadOutcome.Usable usable ->
                switch (Assess.assess(usable.build())) {
                    case AssessOutcome.Unusable unusable ->
                        unusable.problems().stream()
                                .map(problem -> problem.path() + " " + problem.value())
                                .toList();
                    case AssessOutcome.Assessed assessed -> List.of();
                };
        };
    }

    /** All sheets of a build file. */
    public static List<Sheet> sheets(String text) {
        return Sheets.of(assessed(text), ISSUE, KEYS);
    }

    /** One of them. */
    public static Sheet sheet(String text, String key) {
        return sheets(text).stream()
                .filter(sheet -> sheet.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no sheet " + key));
    }
}
