package org.brakewright.drawing;

import java.util.List;
import java.util.stream.Stream;

/** How far shapes reach. */
public final class Extent {
    /** Part of the capital's height that the letters g, j, p, q, y of the font reach below the baseline. */
    private static final double DESCENT = 0.33;

    private Extent() {}

    /** The smallest upright rectangle around the middles of all lines and around all words, mm. */
    public static Bounds of(List<? extends Shape> shapes) {
        return Marks.of(shapes).stream()
                .flatMap(Extent::points)
                .map(point -> new Bounds(point.x(), point.y(), point.x(), point.y()))
                .reduce(Bounds::union)
                .orElseThrow(() -> new IllegalArgumentException("shapes leave no mark"));
    }

    private static Stream<Point> points(Mark mark) {
        return switch (mark) {
            case Line line -> Stream.of(line.from(), line.to());
            case Circle circle ->
                Stream.of(0, 90, 180, 270).map(angle -> circle.centre().polar(circle.radius(), angle));
            case Arc arc -> points(arc);
            case Polyline line -> line.edges().stream().flatMap(Extent::points);
            case Text text -> points(text);
        };
    }

    private static Stream<Point> points(Edge edge) {
        Stream<Point> ends = Stream.of(edge.from(), edge.to());
        return edge.straight() ? ends : Stream.concat(ends, points(edge.arc(Stroke.OUTLINE)));
    }

    private static Stream<Point> points(Arc arc) {
        Stream<Point> tops = Stream.of(0, 90, 180, 270).filter(arc::passes).map(arc::at);
        return Stream.concat(Stream.of(arc.at(arc.start()), arc.at(arc.end())), tops);
    }

    private static Stream<Point> points(Text text) {
        Point start = text.start().polar(-DESCENT * text.height(), text.rotation() + 90);
        Point top = start.polar((1 + DESCENT) * text.height(), text.rotation() + 90);
        double width = text.width();
        return Stream.of(start, top, start.polar(width, text.rotation()), top.polar(width, text.rotation()));
    }
}
