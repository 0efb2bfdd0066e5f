package org.brakewright.app.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a record's {@code @param} lines say about its components. */
final class ParamDocs {
    private ParamDocs() {}

    static Optional<String> of(Class<?> type, String component) {
        Matcher comment = Pattern.compile(
                        "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public )?record " + type.getSimpleName() + "\\(",
                        Pattern.DOTALL)
                .matcher(source(type));
        if (!comment.find()) {
            return Optional.empty();
        }
        Matcher param = Pattern.compile("@param " + component + "\\s((?:(?!@param).)*)", Pattern.DOTALL)
                .matcher(comment.group(1).replaceAll("(?m)^\\s*\\*", ""));
        return param.find() ? Optional.of(param.group(1).strip().replaceAll("\\s+", " ")) : Optional.empty();
    }

    private static String source(Class<?> type) {
        Class<?> outermost = type;
        while (outermost.getEnclosingClass() != null) {
            outermost = outermost.getEnclosingClass();
        }
        String room = outermost.getPackageName().split("\\.", -1)[2];
        Path source = Path.of("..", room, "src", "main", "java")
                .resolve(outermost.getName().replace('.', '/') + ".java");
        try {
            return Files.readString(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
