package org.brakewright.findings;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.brakewright.model.Build;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Origin;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.Reading;
import org.jspecify.annotations.Nullable;

/** Makes the model's records of texts by key path, as a builder would write them. */
final class Written {
    private final Map<String, String> texts;

    private Written(Map<String, String> texts) {
        this.texts = texts;
    }

    static Build build(Map<String, String> texts) {
        return Build.class.cast(new Written(texts).record(Build.class, ""));
    }

    private @Nullable Object value(Class<?> type, String path) {
        if (type == Given.class) {
            String written = texts.get(path);
            return written == null ? null : given(path, written);
        }
        if (type.isSealed() || type.isRecord()) {
            return texts.keySet().stream().anyMatch(key -> key.startsWith(path + ".")) ? part(type, path) : null;
        }
        String text = texts.get(path);
        if (text == null || type == String.class) {
            return text;
        }
        if (type == Boolean.class) {
            return text.equals("yes");
        }
        return type.isEnum() ? constant(type, text) : Integer.valueOf(text);
    }

    private Object part(Class<?> type, String path) {
        if (type.isRecord()) {
            return record(type, path + ".");
        }
        String kind = texts.get(path + ".kind");
        return record(
                Arrays.stream(type.getPermittedSubclasses())
                        .filter(each -> each.getAnnotation(Kind.class).value().equals(kind))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(path + ".kind: " + kind)),
                path + ".");
    }

    private Object record(Class<?> type, String prefix) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = Arrays.stream(components)
                .map(each -> component(each, prefix + FieldCatalogue.key(each)))
                .toArray();
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }

    private @Nullable Object component(RecordComponent component, String path) {
        if (component.getType() != List.class) {
            return value(component.getType(), path);
        }
        Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        List<Object> values = new ArrayList<>();
        for (Object next = value(element, path + "[0]"); next != null; ) {
            values.add(next);
            next = value(element, path + "[" + values.size() + "]");
        }
        return values.isEmpty() && component.getAnnotatedType().isAnnotationPresent(Nullable.class)
                ? null
                : List.copyOf(values);
    }

    private static Given given(String path, String written) {
        return switch (QuantityReader.read(written, FieldCatalogue.at(path).dimension())) {
            case Reading.Read read -> new Given(read.quantity(), Origin.MEASURED, path);
            case Reading.Refused refused -> throw new IllegalArgumentException(path + ": " + refused.reason());
        };
    }

    private static Object constant(Class<?> type, String text) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.toString().equals(text.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + type.getSimpleName() + " " + text));
    }
}
