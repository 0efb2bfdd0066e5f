package org.brakewright.analysis;

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
import org.jspecify.annotations.Nullable;

/** Fills the model's records from values by key path: texts to be read, or values that are ready. */
final class CarRecords {
    private final Map<String, Object> values;

    private CarRecords(Map<String, Object> values) {
        this.values = values;
    }

    static Build of(Map<String, Object> values) {
        return (Build) new CarRecords(values).fill(Build.class, "");
    }

    private Object fill(Class<?> type, String prefix) {
        RecordComponent[] components = type.getRecordComponents();
        @Nullable
        Object[] parts = Arrays.stream(components)
                .map(each -> component(each, prefix + FieldCatalogue.key(each)))
                .toArray();
        try {
            return type.getDeclaredConstructors()[0].newInstance(parts);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot fill " + type, e);
        }
    }

    private @Nullable Object component(RecordComponent component, String path) {
        return component.getType() == List.class ? list(component, path) : value(component.getType(), path);
    }

    private List<Object> list(RecordComponent component, String path) {
        Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        List<Object> parts = new ArrayList<>();
        Object next = value(element, path + "[0]");
        while (next != null) {
            parts.add(next);
            next = value(element, path + "[" + parts.size() + "]");
        }
        return List.copyOf(parts);
    }

    private @Nullable Object value(Class<?> type, String path) {
        Object value = values.get(path);
        if (type != Given.class && (type.isRecord() || type.isSealed())) {
            boolean there = values.keySet().stream().anyMatch(key -> key.startsWith(path + "."));
            return there ? fill(kind(type, path), path + ".") : null;
        }
        return value instanceof String text ? scalar(type, path, text) : value;
    }

    private static Object scalar(Class<?> type, String path, String text) {
        if (type == Given.class) {
            return WrittenCar.read(path, text, Origin.MEASURED);
        }
        if (type == Boolean.class) {
            return text.equals("yes");
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(each -> each.toString().equals(text.toUpperCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow();
        }
        return type == String.class ? text : Integer.valueOf(text);
    }

    private Class<?> kind(Class<?> type, String path) {
        return type.isRecord()
                ? type
                : Arrays.stream(type.getPermittedSubclasses())
                        .filter(each -> each.getAnnotation(Kind.class).value().equals(values.get(path + ".kind")))
                        .findFirst()
                        .orElseThrow();
    }
}
