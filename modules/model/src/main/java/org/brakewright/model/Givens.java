package org.brakewright.model;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every quantity that a builder wrote down, found by walking through the records of the model. */
public final class Givens {
    private Givens() {}

    /** The quantities of a build, in the order of the build file. */
    public static List<Given> of(Build build) {
        List<Given> found = new ArrayList<>();
        collect(build, found);
        return List.copyOf(found);
    }

    private static void collect(@Nullable Object value, List<Given> found) {
        if (value instanceof Given given) {
            found.add(given);
        } else if (value instanceof List<?> list) {
            list.forEach(item -> collect(item, found));
        } else if (value instanceof Record part) {
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                collect(read(component, part), found);
            }
        }
    }

    private static @Nullable Object read(RecordComponent component, Record part) {
        try {
            return component.getAccessor().invoke(part);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a record of the model can be read: " + component, e);
        }
    }
}
