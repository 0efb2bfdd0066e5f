package org.brakewright.drawing;

import java.util.List;

/** Marks after a placement. Line widths are not scaled; words stay readable in a mirror. */
final class Placed {
    private Placed() {}

    static Mark mark(Mark mark, Placement at) {
        return switch (mark) {
            case Line line -> new Line(at.apply(line.from()), at.apply(line.to()), line.stroke());
            case Circle circle -> new Circle(at.apply(circle.centre()), at.scale() * circle.radius(), circle.stroke());
            case Arc arc -> arc(arc, at);
            case Polyline line -> new Polyline(vertices(line, at), line.closed(), line.stroke());
            case Text text -> text(text, at);
        };
    }

    /** A mirror turns the sense of an arc: the end comes first. */
    private static Arc arc(Arc arc, Placement at) {
        double start = at.rotation() + (at.mirrored() ? 180 - arc.end() : arc.start());
        return new Arc(at.apply(arc.centre()), at.scale() * arc.radius(), start, start + arc.sweep(), arc.stroke());
    }

    private static List<Vertex> vertices(Polyline line, Placement at) {
        return line.vertices().stream()
                .map(vertex -> new Vertex(at.apply(vertex.at()), at.mirrored() ? -vertex.bulge() : vertex.bulge()))
                .toList();
    }

    private static Text text(Text text, Placement at) {
        Align align = at.mirrored() ? text.align().mirrored() : text.align();
        double rotation = at.rotation() + (at.mirrored() ? -text.rotation() : text.rotation());
        return new Text(
                at.apply(text.anchor()), at.scale() * text.height(), text.words(), align, rotation, text.layer());
    }
}
