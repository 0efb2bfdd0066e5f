package org.brakewright.sheets;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Shape;

/** Blocks one beside the other, their origins on one level. */
public final class Row {
    private static final double GAP = 12;

    private final List<Shape> shapes = new ArrayList<>();
    private double right;

    /** Adds shapes to the right of those before. */
    public Row add(List<? extends Shape> block) {
        Bounds room = Extent.of(block);
        double left = shapes.isEmpty() ? 0 : right + GAP;
        shapes.add(new Figure(List.copyOf(block), Placement.at(left - room.minX(), 0)));
        right = left + room.width();
        return this;
    }

    /** Everything that was added. */
    public List<Shape> shapes() {
        return List.copyOf(shapes);
    }
}
