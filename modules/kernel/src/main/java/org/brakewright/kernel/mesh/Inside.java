package org.brakewright.kernel.mesh;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Tells whether a spot lies in a panel or a ring. */
final class Inside {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final IndexedPointInAreaLocator area;

    private Inside(Polygon polygon) {
        area = new IndexedPointInAreaLocator(polygon);
    }

    static Inside of(PanelPlan plan) {
        return new Inside(panel(plan));
    }

    static Inside of(Ring ring) {
        return new Inside(polygon(ring));
    }

    boolean holds(double x, double y) {
        return area.locate(new Coordinate(x, y)) != Location.EXTERIOR;
    }

    private static Polygon panel(PanelPlan plan) {
        LinearRing[] holes = plan.holes().stream().map(Inside::ring).toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(plan.outline()), holes);
    }

    static Polygon polygon(Ring ring) {
        return FACTORY.createPolygon(ring(ring));
    }

    private static LinearRing ring(Ring ring) {
        List<Spot> corners = ring.corners();
        Stream<Spot> closed = Stream.concat(corners.stream(), Stream.of(corners.getFirst()));
        return FACTORY.createLinearRing(closed.map(Inside::coordinate).toArray(Coordinate[]::new));
    }

    static Coordinate coordinate(Spot spot) {
        return new Coordinate(spot.x(), spot.y());
    }
}
