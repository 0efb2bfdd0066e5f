package org.brakewright.drawing.outline;

import java.util.List;
import org.brakewright.drawing.Contour;

/** A flat part: its edge and its holes, and the name its faults are reported under. */
public record Outline(String name, Contour contour, List<Hole> holes) {
    public Outline {
        holes = List.copyOf(holes);
    }
}
