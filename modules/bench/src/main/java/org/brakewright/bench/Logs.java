package org.brakewright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakewright.buildfile.Beside;

/** The logs that lie beside an example. */
final class Logs {
    private Logs() {}

    static Beside of(String car) {
        return name -> {
            try {
                return new Beside.Found.There(ByteBuffer.wrap(Files.readAllBytes(Path.of("examples", car, name))));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        };
    }
}
