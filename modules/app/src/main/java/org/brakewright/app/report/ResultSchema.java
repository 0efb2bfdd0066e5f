package org.brakewright.app.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The published schema of the results. */
public final class ResultSchema {
    private ResultSchema() {}

    /** JSON Schema 2020-12 of what {@code check --json} prints. */
    public static String json() {
        try (InputStream in = ResultSchema.class.getResourceAsStream("result.schema.json")) {
            if (in == null) {
                throw new IllegalStateException("the schema of the results is packed with the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
