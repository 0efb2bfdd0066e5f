package org.brakewright.buildfile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The published pages of the build file. Run the tests with {@code -Dbrakewright.refresh=true} to write their generated
 * parts anew after a change of the model.
 */
final class Docs {
    private static final Path FOLDER = Path.of("..", "..", "docs", "fileformat");

    private Docs() {}

    static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    static void refresh(String name, String text) {
        if (!Boolean.getBoolean("brakewright.refresh")) {
            return;
        }
        try {
            Files.writeString(FOLDER.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + name, e);
        }
    }
}
