package org.brakewright.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One drawing at true scale.
 *
 * @param stamp words printed across the drawing that forbid to cut, or null
 */
public record Drawing(
        TitleBlock title, List<Shape> shapes, @Nullable String stamp) {
    public Drawing {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException("shapes must not be empty");
        }
        if (stamp != null) {
            Demand.filled("stamp", stamp);
        }
    }

    /** A drawing that may be cut. */
    public static Drawing of(TitleBlock title, List<? extends Shape> shapes) {
        return new Drawing(title, List.copyOf(shapes), null);
    }

    /** The same, forbidden to cut. */
    public Drawing stamped(String words) {
        return new Drawing(title, shapes, words);
    }
}
