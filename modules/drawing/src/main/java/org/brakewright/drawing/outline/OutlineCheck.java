package org.brakewright.drawing.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Contour;
import org.brakewright.drawing.Edge;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;

/** Looks for everything that keeps a part from being cut. */
public final class OutlineCheck {
    /** Crossings of the same two edges nearer than this are one, mm: chords of one arc meet in its corners. */
    private static final double ONE_CROSSING = 0.01;

    private OutlineCheck() {}

    /** All faults of an outline and its holes; none when it can be cut. Round edges are held to 0.005 mm. */
    public static List<OutlineFault> faults(Outline outline) {
        var faults = new ArrayList<OutlineFault>();
        Ring edge = ring(outline.name(), outline.contour(), faults);
        List<Ring> holes = outline.holes().stream()
                .map(hole -> ring(hole.name(), hole.contour(), faults))
                .toList();
        for (int i = 0; i < holes.size(); i++) {
            inside(holes.get(i), edge, faults);
            for (int j = i + 1; j < holes.size(); j++) {
                apart(holes.get(i), holes.get(j), faults);
            }
        }
        return List.copyOf(faults);
    }

    /** The faults that a contour has alone. */
    private static Ring ring(String name, Contour contour, List<OutlineFault> faults) {
        Ring ring = Ring.of(name, contour);
        switch (contour) {
            case Circle circle -> {}
            case Polyline line -> alone(line, ring, faults);
        }
        return ring;
    }

    private static void alone(Polyline line, Ring ring, List<OutlineFault> faults) {
        if (!ring.closed()) {
            faults.add(new OutlineFault.NotClosed(ring.name(), ring.gap()));
        }
        List<Edge> edges = line.edges();
        IntStream.range(0, edges.size())
                .filter(i -> edges.get(i).length() <= Chord.SAME)
                .forEach(i -> faults.add(new OutlineFault.ZeroEdge(
                        ring.name(), i + 1, edges.get(i).from())));
        if (ring.chords().size() < 3) {
            faults.add(new OutlineFault.NoArea(ring.name()));
        } else {
            faults.addAll(crossings(ring));
        }
    }

    private static List<OutlineFault.Crossing> crossings(Ring ring) {
        var found = new ArrayList<OutlineFault.Crossing>();
        for (int i = 0; i < ring.chords().size(); i++) {
            for (int j = i + 1; j < ring.chords().size(); j++) {
                Chord one = ring.chords().get(i);
                Chord two = ring.chords().get(j);
                Optional<Point> at = ring.neighbors(i, j) ? one.overlap(two, Chord.SAME) : one.meets(two);
                at.ifPresent(point -> add(crossing(ring, one, ring, two, point), found));
            }
        }
        return found;
    }

    private static List<OutlineFault.Crossing> crossings(Ring ring, Ring other) {
        var found = new ArrayList<OutlineFault.Crossing>();
        for (Chord one : ring.chords()) {
            for (Chord two : other.chords()) {
                one.meets(two).ifPresent(point -> add(crossing(ring, one, other, two, point), found));
            }
        }
        return found;
    }

    private static OutlineFault.Crossing crossing(Ring ring, Chord one, Ring other, Chord two, Point at) {
        return new OutlineFault.Crossing(ring.name(), one.edge(), other.name(), two.edge(), at);
    }

    private static void add(OutlineFault.Crossing crossing, List<OutlineFault.Crossing> found) {
        if (found.stream().noneMatch(known -> same(known, crossing))) {
            found.add(crossing);
        }
    }

    private static boolean same(OutlineFault.Crossing one, OutlineFault.Crossing two) {
        return one.edge() == two.edge()
                && one.otherEdge() == two.otherEdge()
                && one.at().distance(two.at()) < ONE_CROSSING;
    }

    private static void inside(Ring hole, Ring edge, List<OutlineFault> faults) {
        List<OutlineFault.Crossing> crossings = crossings(hole, edge);
        faults.addAll(crossings);
        if (crossings.isEmpty() && whole(hole, edge) && !edge.holds(start(hole))) {
            faults.add(new OutlineFault.HoleOutside(hole.name(), edge.name()));
        }
    }

    private static void apart(Ring hole, Ring other, List<OutlineFault> faults) {
        List<OutlineFault.Crossing> crossings = crossings(hole, other);
        faults.addAll(crossings);
        if (!crossings.isEmpty() || !whole(hole, other)) {
            return;
        }
        if (other.holds(start(hole))) {
            faults.add(new OutlineFault.HoleInHole(hole.name(), other.name()));
        } else if (hole.holds(start(other))) {
            faults.add(new OutlineFault.HoleInHole(other.name(), hole.name()));
        }
    }

    /** Only of rings that bound an area can be said what lies inside. */
    private static boolean whole(Ring one, Ring two) {
        return Stream.of(one, two)
                .allMatch(ring -> ring.closed() && ring.chords().size() >= 3);
    }

    private static Point start(Ring ring) {
        return ring.chords().getFirst().from();
    }
}
