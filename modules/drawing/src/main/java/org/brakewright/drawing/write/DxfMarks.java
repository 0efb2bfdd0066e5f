package org.brakewright.drawing.write;

import org.brakewright.drawing.Align;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.Vertex;

/** Marks as entities of DXF R12. */
final class DxfMarks {
    private DxfMarks() {}

    static void add(Mark mark, DxfTags tags) {
        switch (mark) {
            case Line line -> at(11, line.to(), at(10, line.from(), start("LINE", line.stroke(), tags)));
            case Circle circle ->
                at(10, circle.centre(), start("CIRCLE", circle.stroke(), tags)).add(40, circle.radius());
            case Arc arc -> arc(arc, tags);
            case Polyline line -> polyline(line, tags);
            case Text text -> text(text, tags);
        }
    }

    static String lineType(LineKind kind) {
        return switch (kind) {
            case CONTINUOUS -> "CONTINUOUS";
            case DASHED -> "DASHED";
            case CHAIN -> "CENTER";
            case DOUBLE_CHAIN -> "PHANTOM";
        };
    }

    /** A full turn has no start and end in DXF: it is a circle. */
    private static void arc(Arc arc, DxfTags tags) {
        if (arc.sweep() == 360) {
            add(new Circle(arc.centre(), arc.radius(), arc.stroke()), tags);
        } else {
            at(10, arc.centre(), start("ARC", arc.stroke(), tags))
                    .add(40, arc.radius())
                    .add(50, turn(arc.start()))
                    .add(51, turn(arc.end()));
        }
    }

    private static void polyline(Polyline line, DxfTags tags) {
        start("POLYLINE", line.stroke(), tags).add(66, 1).at(10, 0, 0).add(70, line.closed() ? 1 : 0);
        for (Vertex vertex : line.vertices()) {
            at(10, vertex.at(), start("VERTEX", line.stroke(), tags)).ratio(42, vertex.bulge());
        }
        start("SEQEND", line.stroke(), tags);
    }

    /** Group 10 is the start of the words as we would set them, group 11 the anchor that is binding when aligned. */
    private static void text(Text text, DxfTags tags) {
        tags.add(0, "TEXT").add(8, text.layer().name());
        at(10, text.start(), tags).add(40, text.height()).add(1, DxfWords.of(text.words()));
        tags.add(50, turn(text.rotation())).add(7, "STANDARD");
        if (text.align() != Align.LEFT) {
            at(11, text.anchor(), tags.add(72, text.align() == Align.CENTER ? 1 : 2));
        }
    }

    private static DxfTags start(String entity, Stroke stroke, DxfTags tags) {
        return tags.add(0, entity).add(8, stroke.layer().name()).add(6, lineType(stroke.kind()));
    }

    private static DxfTags at(int code, Point point, DxfTags tags) {
        return tags.at(code, point.x(), point.y());
    }

    private static double turn(double degrees) {
        double rest = degrees % 360;
        return rest < 0 ? rest + 360 : rest;
    }
}
