package org.brakewright.drawing.outline;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Contour;
import org.brakewright.drawing.Edge;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;

/**
 * A contour as chords. Round edges become chords that stay within 0.005 mm of the arc; chords too short to have a
 * direction are left out.
 *
 * @param gap between the two ends, mm; 0 when closed
 */
record Ring(String name, List<Chord> chords, double gap) {
    private static final double SAGITTA = 0.005;

    Ring {
        chords = List.copyOf(chords);
    }

    static Ring of(String name, Contour contour) {
        return switch (contour) {
            case Circle circle -> new Ring(name, chords(whole(circle), 1, false), 0);
            case Polyline line -> new Ring(name, chords(line), gap(line));
        };
    }

    boolean closed() {
        return gap <= Chord.SAME;
    }

    /** Whether the chords at two indices follow one another. */
    boolean neighbors(int i, int j) {
        return j - i == 1 || (closed() && i == 0 && j == chords.size() - 1);
    }

    /** Whether a place lies inside: a ray to the right passes an odd number of chords. */
    boolean holds(Point point) {
        return chords.stream().filter(chord -> passes(chord, point)).count() % 2 == 1;
    }

    private static boolean passes(Chord chord, Point point) {
        boolean spans = chord.from().y() > point.y() != chord.to().y() > point.y();
        if (!spans) {
            return false;
        }
        double share =
                (point.y() - chord.from().y()) / (chord.to().y() - chord.from().y());
        return point.x()
                < chord.from().x() + share * (chord.to().x() - chord.from().x());
    }

    private static double gap(Polyline line) {
        Point first = line.vertices().getFirst().at();
        return line.closed() ? 0 : first.distance(line.vertices().getLast().at());
    }

    private static List<Chord> chords(Polyline line) {
        var chords = new ArrayList<Chord>();
        List<Edge> edges = line.edges();
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (edge.straight()) {
                add(edge.from(), edge.to(), i + 1, chords);
            } else {
                chords.addAll(chords(edge.arc(Stroke.OUTLINE), i + 1, edge.bulge() < 0));
            }
        }
        return chords;
    }

    private static Arc whole(Circle circle) {
        return new Arc(circle.centre(), circle.radius(), 0, 360, circle.stroke());
    }

    private static List<Chord> chords(Arc arc, int edge, boolean backwards) {
        double step = 2 * Math.acos(Math.max(0.5, 1 - SAGITTA / arc.radius()));
        int count = Math.max(3, (int) Math.ceil(Math.toRadians(arc.sweep()) / step));
        var chords = new ArrayList<Chord>();
        for (int i = 0; i < count; i++) {
            int from = backwards ? count - i : i;
            int to = backwards ? from - 1 : from + 1;
            add(at(arc, from, count), at(arc, to, count), edge, chords);
        }
        return chords;
    }

    private static Point at(Arc arc, int part, int count) {
        return arc.at(arc.start() + arc.sweep() * part / count);
    }

    private static void add(Point from, Point to, int edge, List<Chord> chords) {
        if (from.distance(to) > Chord.SAME) {
            chords.add(new Chord(from, to, edge));
        }
    }
}
