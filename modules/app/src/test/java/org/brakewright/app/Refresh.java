package org.brakewright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files that a test compares byte for byte. Run the tests with {@code -Dbrakewright.refresh=true} to write them anew,
 * then read the difference before it is committed.
 */
public final class Refresh {
    /** What a failing comparison says. */
    public static final String HOW =
            "differs; when the change is wanted: mvn test -Dbrakewright.refresh=true, then read the difference";

    private Refresh() {}

    /** Writes a file when refreshing was asked for. */
    public static void file(Path file, String text) {
        if (!Boolean.getBoolean("brakewright.refresh")) {
            return;
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
