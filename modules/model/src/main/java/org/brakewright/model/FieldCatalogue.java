package org.brakewright.model;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Every quantity the build file can hold, read once from the records of the model. */
public final class FieldCatalogue {
    private static final Pattern WORD = Pattern.compile("(?<=[a-z])(?=[A-Z0-9])");
    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");
    private static final Map<String, Field> FIELDS = collect();

    private FieldCatalogue() {}

    /** The field at a key path such as {@code car.load_cases[0].cg_height}. */
    public static Optional<Field> find(String path) {
        return Optional.ofNullable(FIELDS.get(INDEX.matcher(path).replaceAll("[]")));
    }

    /**
     * The field at a key path that must exist.
     *
     * @throws IllegalArgumentException when no such key exists
     */
    public static Field at(String path) {
        return find(path).orElseThrow(() -> new IllegalArgumentException("no field at " + path));
    }

    /** All fields in the order of the build file. */
    public static List<Field> all() {
        return List.copyOf(FIELDS.values());
    }

    /** The build file's key for a record component: its name in snake_case. */
    public static String key(RecordComponent component) {
        return WORD.matcher(component.getName()).replaceAll("_").toLowerCase(Locale.ROOT);
    }

    private static Map<String, Field> collect() {
        Map<String, Field> fields = new LinkedHashMap<>();
        walk(Build.class, "", "", fields);
        return fields;
    }

    private static void walk(Class<?> type, String prefix, String section, Map<String, Field> fields) {
        if (type.isSealed()) {
            for (Class<?> kind : type.getPermittedSubclasses()) {
                walk(kind, prefix, section, fields);
            }
        } else if (type.isRecord() && type != Given.class) {
            for (RecordComponent component : type.getRecordComponents()) {
                visit(component, prefix, section, fields);
            }
        }
    }

    private static void visit(RecordComponent component, String prefix, String section, Map<String, Field> fields) {
        String path = prefix.isEmpty() ? key(component) : prefix + "." + key(component);
        boolean list = component.getType() == List.class;
        String pattern = list ? path + "[]" : path;
        Asked asked = component.getAnnotation(Asked.class);
        if (asked != null) {
            fields.putIfAbsent(pattern, field(pattern, section, asked));
            return;
        }
        Label label = component.getAnnotation(Label.class);
        String inner = label == null ? section : join(section, label.value());
        walk(list ? element(component) : component.getType(), pattern, inner, fields);
    }

    private static Field field(String pattern, String section, Asked asked) {
        return new Field(
                pattern,
                section,
                asked.label(),
                asked.dimension(),
                asked.least(),
                asked.most(),
                asked.why(),
                asked.how());
    }

    private static String join(String section, String label) {
        return section.isEmpty() ? label : section + ", " + label;
    }

    private static Class<?> element(RecordComponent component) {
        Type generic = component.getGenericType();
        if (generic instanceof ParameterizedType list && list.getActualTypeArguments()[0] instanceof Class<?> element) {
            return element;
        }
        throw new IllegalStateException("a list of the model names its element type: " + component);
    }
}
