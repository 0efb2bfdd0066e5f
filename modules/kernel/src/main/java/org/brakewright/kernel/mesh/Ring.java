package org.brakewright.kernel.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A closed line: the outline of a panel, a hole or a doubler. Either way round; the last corner joins the first.
 *
 * @param corners may repeat the first corner at the end, which is dropped
 */
public record Ring(String name, List<Spot> corners) {
    public Ring {
        boolean closed = corners.size() > 1 && corners.getFirst().equals(corners.getLast());
        corners = List.copyOf(closed ? corners.subList(0, corners.size() - 1) : corners);
    }

    /** A rectangle by two opposite corners, its sides along the axes. */
    public static Ring rectangle(String name, Spot low, Spot high) {
        return new Ring(name, List.of(low, new Spot(high.x(), low.y()), high, new Spot(low.x(), high.y())));
    }

    /**
     * A circle as a polygon with its corners on the circle.
     *
     * @param diameter m
     * @param corners three at least; twelve miss the circle by 3.4 % of its radius at most
     */
    public static Ring circle(String name, Spot center, double diameter, int corners) {
        Require.positive("diameter", diameter);
        Require.that(corners >= 3, "corners", corners, "must be three at least");
        return new Ring(
                name,
                IntStream.range(0, corners)
                        .mapToDouble(i -> 2 * Math.PI * i / corners)
                        .mapToObj(angle -> new Spot(
                                center.x() + diameter / 2 * Math.cos(angle),
                                center.y() + diameter / 2 * Math.sin(angle)))
                        .toList());
    }

    /** The sides in order; side i begins at corner i. */
    List<MustLine> sides() {
        List<MustLine> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(new MustLine(name, corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return sides;
    }
}
