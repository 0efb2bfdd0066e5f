package org.brakewright.kernel.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.RobustLineIntersector;

/**
 * What the mesh must keep of a plan: its sides and lines, cut where they cross or touch one another or a point.
 *
 * @param spots no two on one place
 * @param chains spots along every side and line, in the order of {@link #lines(PanelPlan)}
 */
record Skeleton(List<Spot> spots, List<List<Integer>> chains) {
    /** Two spots joined by an edge that the mesh must keep; the lesser number first. */
    record Piece(int from, int to) {}

    static Skeleton of(PanelPlan plan) {
        List<MustLine> lines = lines(plan);
        List<Spot> spots = new ArrayList<>();
        for (MustLine line : lines) {
            number(spots, line.from());
            number(spots, line.to());
        }
        plan.points().forEach(point -> number(spots, point.at()));
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < i; j++) {
                crossing(lines.get(j), lines.get(i), spots);
            }
        }
        return new Skeleton(
                spots, lines.stream().map(line -> chain(line, spots)).toList());
    }

    /** Sides of the outline, of the holes and of the regions, then the lines. */
    static List<MustLine> lines(PanelPlan plan) {
        Stream<Ring> rings =
                Stream.concat(Stream.of(plan.outline()), Stream.concat(plan.holes().stream(), plan.regions().stream()));
        return Stream.concat(rings.flatMap(ring -> ring.sides().stream()), plan.lines().stream())
                .toList();
    }

    /** The number of the spot at a place; a new one when there is none. */
    static int number(List<Spot> spots, Spot at) {
        for (int i = 0; i < spots.size(); i++) {
            if (spots.get(i).to(at) < Mesher.TOUCH) {
                return i;
            }
        }
        spots.add(at);
        return spots.size() - 1;
    }

    private static void crossing(MustLine one, MustLine other, List<Spot> spots) {
        RobustLineIntersector crossing = new RobustLineIntersector();
        crossing.computeIntersection(
                Inside.coordinate(one.from()),
                Inside.coordinate(one.to()),
                Inside.coordinate(other.from()),
                Inside.coordinate(other.to()));
        if (crossing.isProper()) {
            number(spots, new Spot(crossing.getIntersection(0).x, crossing.getIntersection(0).y));
        }
    }

    /** The spots along a line, in order. */
    static List<Integer> chain(MustLine line, List<Spot> spots) {
        List<Integer> along = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            if (line.distance(spots.get(i)) < Mesher.TOUCH) {
                along.add(i);
            }
        }
        along.sort(Comparator.comparingDouble(i -> line.share(spots.get(i))));
        return along;
    }

    /** All pieces that lie in the panel, each once. */
    List<Piece> pieces(Inside inside) {
        List<Piece> pieces = new ArrayList<>();
        Set<Piece> seen = new HashSet<>();
        for (List<Integer> chain : chains) {
            for (int k = 1; k < chain.size(); k++) {
                int a = chain.get(k - 1);
                int b = chain.get(k);
                Piece piece = new Piece(Math.min(a, b), Math.max(a, b));
                if (seen.add(piece) && isIn(piece, inside)) {
                    pieces.add(piece);
                }
            }
        }
        return pieces;
    }

    /** Sides of the panel itself lie on its rim, where rounding may put their middle outside: a nearby spot decides. */
    private boolean isIn(Piece piece, Inside inside) {
        Spot a = spots.get(piece.from());
        Spot b = spots.get(piece.to());
        Spot middle = a.towards(b, 0.5);
        double share = 2 * Mesher.TOUCH / a.to(b);
        double dx = share * (b.y() - a.y());
        double dy = share * (a.x() - b.x());
        return inside.holds(middle.x() + dx, middle.y() + dy) || inside.holds(middle.x() - dx, middle.y() - dy);
    }
}
