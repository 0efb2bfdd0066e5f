package org.brakewright.buildfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.brakewright.model.Build;

/** Build files for tests; the cars and all their figures are invented. */
final class Texts {
    private Texts() {}

    static String larkspur() {
        return text("larkspur.yaml");
    }

    static String text(String name) {
        try (InputStream stream = Texts.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalArgumentException("no such test text: " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    /** The build that a text states; fails with its problems when it states none. */
    static Build build(String text) {
        return switch (BuildFile.read(text)) {
            case ReadOutcome.Usable usable -> usable.build();
            case ReadOutcome.Unusable unusable -> throw new AssertionError(unusable.problems() + "\n" + text);
        };
    }

    static List<LocatedProblem> problems(String text) {
        return switch (BuildFile.read(text)) {
            case ReadOutcome.Usable _ -> List.of();
            case ReadOutcome.Unusable unusable -> unusable.problems();
        };
    }
}
