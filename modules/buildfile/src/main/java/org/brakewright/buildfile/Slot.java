package org.brakewright.buildfile;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.brakewright.model.Asked;
import org.brakewright.model.Enclosed;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/**
 * One key of the build file, read from a record component of the model.
 *
 * @param key its name in the file
 * @param type what stands there; of a list, what each entry is
 * @param list whether it holds a list
 * @param component where it comes from
 */
record Slot(String key, Class<?> type, boolean list, RecordComponent component) {

    /** The keys of a section, in the order of the model. */
    static List<Slot> of(Class<?> section) {
        return Arrays.stream(section.getRecordComponents())
                .filter(component -> !component.isAnnotationPresent(Enclosed.class))
                .map(Slot::of)
                .toList();
    }

    private static Slot of(RecordComponent component) {
        boolean list = component.getType() == List.class;
        Class<?> type = list ? element(component) : component.getType();
        return new Slot(FieldCatalogue.key(component), type, list, component);
    }

    /** The records that {@code kind:} chooses among, by its word. */
    static Map<String, Class<?>> kinds(Class<?> choice) {
        Map<String, Class<?>> kinds = new LinkedHashMap<>();
        for (Class<?> record : choice.getPermittedSubclasses()) {
            Kind kind = record.getAnnotation(Kind.class);
            if (kind == null) {
                throw new IllegalStateException("a record of a sealed interface has a @Kind: " + record);
            }
            kinds.put(kind.value(), record);
        }
        return kinds;
    }

    /** The words of a choice, in the order of the model. */
    static List<String> choices(Class<?> choice) {
        return Arrays.stream(choice.getEnumConstants())
                .map(constant -> ((Enum<?>) constant).name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** How to find a value without which nothing can be computed; empty when the key may be left out. */
    Optional<String> required() {
        return Optional.ofNullable(component.getAnnotation(Required.class)).map(Required::value);
    }

    Optional<Asked> asked() {
        return Optional.ofNullable(component.getAnnotation(Asked.class));
    }

    /** Plain name; the key itself when the model gives none. */
    String label() {
        Label label = component.getAnnotation(Label.class);
        return asked().map(Asked::label).orElse(label == null ? key : label.value());
    }

    /** How to find the value, one sentence; empty when the label says it. */
    String how() {
        Label label = component.getAnnotation(Label.class);
        String how = asked().map(Asked::how).orElse(label == null ? "" : label.how());
        return how.isEmpty() ? required().orElse("") : how;
    }

    /** Whether the list must have an entry: parts and load cases must, a list of choices may stay empty. */
    boolean neverEmpty() {
        return list && required().isPresent() && !type.isEnum();
    }

    /** Whether a section of keys stands here. */
    boolean nested() {
        return type != Given.class && (type.isRecord() || type.isSealed());
    }

    private static Class<?> element(RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType list
                && list.getActualTypeArguments()[0] instanceof Class<?> element) {
            return element;
        }
        throw new IllegalStateException("a list of the model names its element type: " + component);
    }
}
