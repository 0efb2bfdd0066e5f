package org.brakewright.drawing;

import java.util.List;

/** Shapes that are placed together. */
public record Figure(List<Shape> shapes, Placement placement) implements Shape {
    public Figure {
        shapes = List.copyOf(shapes);
    }
}
