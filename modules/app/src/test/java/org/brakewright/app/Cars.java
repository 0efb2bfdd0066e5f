package org.brakewright.app;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.brakewright.app.workspace.Loading;
import org.brakewright.buildfile.Beside;
import org.brakewright.findings.Assessment;

/** The example cars, as they stand and changed. */
public final class Cars {
    /** Names of the examples. */
    public static final List<String> ALL = List.of("hill-climber", "shop-pickup", "heavy-tourer");

    /** The example that names a log beside it. */
    private static final String LOGGED = "heavy-tourer";

    private static final String LOG = "drive.csv";

    private static final Path EXAMPLES = Path.of("..", "..", "examples");

    private Cars() {}

    /** Build file of an example. */
    public static Path file(String name) {
        return EXAMPLES.resolve(name).resolve("car.yaml");
    }

    /** What the example is expected to print. */
    public static Path expected(String name, String file) {
        return EXAMPLES.resolve(name).resolve("expected").resolve(file);
    }

    /** Text of an example's build file. */
    public static String text(String name) {
        return read(file(name));
    }

    /** Text of an example with one passage replaced, which must be there exactly once. */
    public static String text(String name, String from, String to) {
        return replaced(text(name), from, to);
    }

    /** A text with one passage replaced, which must be there exactly once. */
    public static String replaced(String text, String from, String to) {
        if (text.split(java.util.regex.Pattern.quote(from), -1).length != 2) {
            throw new IllegalArgumentException("not exactly once in the text: " + from);
        }
        return text.replace(from, to);
    }

    /** A copy of a text in a folder, and of the log when it names one. */
    public static Path copy(Path folder, String text) {
        try {
            if (text.contains(LOG)) {
                Files.copy(file(LOGGED).resolveSibling(LOG), folder.resolve(LOG), REPLACE_EXISTING);
            }
            return Files.writeString(folder.resolve("car.yaml"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Text of a file. */
    public static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Assessment of a text; fails with its problems when it cannot be used. */
    public static Assessment assessed(String text) {
        return switch (Loading.text(text, file(LOGGED))) {
            case Loading.Loaded loaded -> loaded.assessment();
            case Loading.Refused refused -> throw new AssertionError(refused.problems() + "\n" + text);
        };
    }

    /** The files that an example may name. */
    public static Beside.Found beside(String name) {
        return new Beside.Found.There(
                ByteBuffer.wrap(read(file(LOGGED).resolveSibling(name)).getBytes(StandardCharsets.UTF_8)));
    }
}
