package org.brakewright.app.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The published schemas of the results. */
public final class ResultSchema {
    private ResultSchema() {}

    /** JSON Schema 2020-12 of what {@code check --json} prints. */
    public static String json() {
        return packed("result.schema.json");
    }

    /** JSON Schema 2020-12 of what {@code tolerance --json} prints. */
    public static String tolerance() {
        return packed("tolerance.schema.json");
    }

    private static String packed(String name) {
        try (InputStream in = ResultSchema.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is packed with the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
