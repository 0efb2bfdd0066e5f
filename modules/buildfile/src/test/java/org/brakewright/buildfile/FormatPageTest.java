package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakewright.model.Build;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page that explains the build file names every key; its tables are written by this test from the model. */
class FormatPageTest {
    private static final String BEGIN = "<!-- tables: begin -->\n";
    private static final String END = "<!-- tables: end -->";

    @Test
    void theTablesAreThoseOfTheModel() {
        String page = Docs.text("README.md");
        String head = page.substring(0, page.indexOf(BEGIN) + BEGIN.length());
        String tail = page.substring(page.indexOf(END));
        Docs.refresh("README.md", head + tables() + tail);
        assertThat(Docs.text("README.md")).isEqualTo(head + tables() + tail);
    }

    static Stream<Field> fields() {
        return FieldCatalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("fields")
    void everyFieldHasARow(Field field) {
        String key = field.pattern().replaceAll("\\[]$", "").replaceAll(".*\\.", "");
        assertThat(Docs.text("README.md").lines())
                .anyMatch(line -> line.startsWith("| `" + key + "` | " + field.label() + " |"));
    }

    private static String tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        collect(Build.class, "the file", tables);
        return tables.entrySet().stream()
                        .map(table -> "\n### " + table.getKey() + "\n\n" + table.getValue())
                        .collect(Collectors.joining())
                + "\n";
    }

    private static void collect(Class<?> type, String path, Map<String, String> tables) {
        if (type.isSealed()) {
            Slot.kinds(type).values().forEach(kind -> collect(kind, path, tables));
            return;
        }
        tables.put(title(type, path), table(type));
        for (Slot slot : Slot.of(type)) {
            if (slot.nested()) {
                String name = slot.key() + (slot.list() ? "[]" : "");
                collect(slot.type(), type == Build.class ? name : path + "." + name, tables);
            }
        }
    }

    private static String title(Class<?> type, String path) {
        Kind kind = type.getAnnotation(Kind.class);
        String name = type == Build.class ? "Top of the file" : "`" + path + "`";
        return kind == null ? name : name + " with `kind: " + kind.value() + "`";
    }

    private static String table(Class<?> type) {
        return Slot.of(type).stream()
                .map(FormatPageTest::row)
                .collect(Collectors.joining(
                        "", "| key | what | needed | write | how to find it |\n|---|---|---|---|---|\n", ""));
    }

    private static String row(Slot slot) {
        String due = slot.nested() && !slot.list() ? "a section" : slot.nested() ? "a list of sections" : Due.at(slot);
        String needed = slot.required().isPresent() ? "yes" : "";
        return "| `" + slot.key() + "` | " + slot.label() + " | " + needed + " | " + due + " | " + slot.how() + " |\n";
    }
}
