package org.brakewright.kernel.mesh;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.brakewright.kernel.mesh.Delaunay.Facet;
import org.brakewright.kernel.mesh.Keeper.Part;

/** Adds nodes until the parts of the skeleton are edges, and every triangle is small enough and not too sharp. */
final class Refinement {
    /** Parts longer than this many wanted lengths are cut. */
    private static final double LONGEST = 1.25;

    /** The greatest radius around a triangle over the wanted length; new nodes lie no nearer than that. */
    private static final double WIDEST = 0.7;

    private final Inside inside;
    private final Fineness fineness;
    private final Delaunay delaunay;
    private final Keeper keeper;
    private final Queue<Part> parts = new ArrayDeque<>();
    private final Queue<Facet> facets = new ArrayDeque<>();

    Refinement(Ring outline, Skeleton skeleton, Inside inside, Fineness fineness) {
        this.inside = inside;
        this.fineness = fineness;
        this.delaunay = new Delaunay(outline);
        skeleton.spots().forEach(delaunay::add);
        this.keeper = new Keeper(skeleton.pieces(inside), delaunay.spots());
        parts.addAll(keeper.parts());
        facets.addAll(delaunay.facets());
    }

    Delaunay delaunay() {
        return delaunay;
    }

    /** Whether it came to its end within {@link Mesher#MOST_NODES}. */
    boolean run() {
        while (delaunay.spots().size() <= Mesher.MOST_NODES) {
            Part part = parts.poll();
            if (part != null) {
                look(part);
                continue;
            }
            Facet facet = facets.poll();
            if (facet == null) {
                return true;
            }
            look(facet);
        }
        return false;
    }

    private void look(Part part) {
        if (keeper.has(part) && (isLong(part) || keeper.isCrowded(part))) {
            cut(part);
        }
    }

    private boolean isLong(Part part) {
        return keeper.length(part) > LONGEST * fineness.at(keeper.middle(part));
    }

    private void cut(Part part) {
        if (keeper.length(part) > Keeper.LEAST) {
            add(keeper.cut(part));
            parts.addAll(keeper.replace(part, delaunay.spots().size() - 1));
            parts.addAll(keeper.crowdedBy(delaunay.spots().getLast()));
        }
    }

    private void add(Spot spot) {
        facets.addAll(delaunay.add(spot));
        keeper.added();
    }

    private void look(Facet facet) {
        if (!facet.stands()) {
            return;
        }
        Shape shape = Shape.of(delaunay.spot(facet.a()), delaunay.spot(facet.b()), delaunay.spot(facet.c()));
        if (inside.holds(shape.middle().x(), shape.middle().y()) && isBad(facet, shape)) {
            mend(facet, shape.center());
        }
    }

    private boolean isBad(Facet facet, Shape shape) {
        if (shape.radius() > WIDEST * fineness.at(shape.middle())) {
            return true;
        }
        double sine = shape.shortest() / (2 * shape.radius());
        return sine < Math.sin(Mesher.SMALLEST_ANGLE) && shape.shortest() > Keeper.LEAST && !isDue(facet, shape);
    }

    /** Whether the plan itself asks for the shortest side. */
    private boolean isDue(Facet facet, Shape shape) {
        int[] nodes = {facet.a(), facet.b(), facet.c()};
        int from = nodes[shape.shortestFrom()];
        int to = nodes[(shape.shortestFrom() + 1) % 3];
        return keeper.acrossSharp(from, to);
    }

    private void mend(Facet facet, Spot center) {
        List<Part> crowded = new ArrayList<>(keeper.crowdedBy(center));
        if (crowded.isEmpty() && inside.holds(center.x(), center.y())) {
            add(center);
            return;
        }
        crowded.removeIf(part -> keeper.length(part) <= Keeper.LEAST);
        crowded.forEach(this::cut);
        if (!crowded.isEmpty()) {
            facets.add(facet);
        }
    }
}
