package org.brakewright.drawing.write;

import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Text;

/** Which layer a mark is on. */
final class Layers {
    private Layers() {}

    static Layer of(Mark mark) {
        return switch (mark) {
            case Line line -> line.stroke().layer();
            case Circle circle -> circle.stroke().layer();
            case Arc arc -> arc.stroke().layer();
            case Polyline line -> line.stroke().layer();
            case Text text -> text.layer();
        };
    }
}
