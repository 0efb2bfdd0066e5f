package org.brakewright.drawing;

import java.util.List;
import java.util.stream.Stream;

/** Takes shapes apart into marks. */
public final class Marks {
    private Marks() {}

    /** The marks of shapes, in order, placed; words that are blank leave none. */
    public static List<Mark> of(List<? extends Shape> shapes) {
        return shapes.stream().flatMap(Marks::of).toList();
    }

    private static Stream<Mark> of(Shape shape) {
        return switch (shape) {
            case Text text -> text.words().isBlank() ? Stream.of() : Stream.of(text);
            case Mark mark -> Stream.of(mark);
            case Dimension dimension -> DimensionMarks.of(dimension).stream();
            case Table table -> TableMarks.of(table).stream();
            case Figure figure -> of(figure.shapes()).stream().map(mark -> Placed.mark(mark, figure.placement()));
        };
    }
}
