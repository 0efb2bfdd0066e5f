package org.brakewright.analysis;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The values at the ends of a tree of records, by path; what is absent is left out. */
public final class Leaves {
    private Leaves() {}

    /** All ends. */
    public static Map<String, Object> of(Object tree) {
        Map<String, Object> leaves = new LinkedHashMap<>();
        collect("", tree, leaves);
        return leaves;
    }

    /** Paths of the numbers. */
    public static Set<String> numbers(Object tree) {
        Set<String> paths = new TreeSet<>();
        of(tree).forEach((path, value) -> {
            if (value instanceof Double) {
                paths.add(path);
            }
        });
        return paths;
    }

    /** Paths at which two trees differ. */
    public static Set<String> different(Object one, Object other) {
        Map<String, Object> first = of(one);
        Map<String, Object> second = of(other);
        Set<String> paths = new TreeSet<>(first.keySet());
        paths.addAll(second.keySet());
        paths.removeIf(path -> Objects.equals(first.get(path), second.get(path)));
        return paths;
    }

    private static void collect(String path, @Nullable Object value, Map<String, Object> leaves) {
        switch (value) {
            case null -> {}
            case List<?> list -> {
                for (int i = 0; i < list.size(); i++) {
                    collect(path + "[" + i + "]", list.get(i), leaves);
                }
            }
            case Optional<?> maybe -> maybe.ifPresent(inner -> collect(path, inner, leaves));
            case OptionalDouble maybe -> maybe.ifPresent(inner -> leaves.put(path, inner));
            case Record tree -> {
                for (RecordComponent component : tree.getClass().getRecordComponents()) {
                    collect(path + "." + component.getName(), read(component, tree), leaves);
                }
            }
            default -> leaves.put(path, value);
        }
    }

    private static @Nullable Object read(RecordComponent component, Object tree) {
        try {
            return component.getAccessor().invoke(tree);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
