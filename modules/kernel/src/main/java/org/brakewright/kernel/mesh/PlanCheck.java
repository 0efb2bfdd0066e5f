package org.brakewright.kernel.mesh;

import static org.brakewright.kernel.mesh.Inside.coordinate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakewright.kernel.mesh.MeshFault.Kind;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Finds all that makes a plan no panel. Later checks need sound rings, so they wait until the rings are sound. */
final class PlanCheck {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PanelPlan plan;
    private final List<MeshFault> faults = new ArrayList<>();

    private PlanCheck(PanelPlan plan) {
        this.plan = plan;
    }

    static List<MeshFault> faults(PanelPlan plan) {
        PlanCheck check = new PlanCheck(plan);
        check.names();
        plan.lines().forEach(line -> check.length(line));
        check.rings().forEach(check::ring);
        if (check.faults.isEmpty()) {
            check.places();
        }
        return check.faults;
    }

    private Stream<Ring> rings() {
        return Stream.of(Stream.of(plan.outline()), plan.holes().stream(), plan.regions().stream())
                .flatMap(each -> each);
    }

    private void names() {
        Set<String> seen = new HashSet<>();
        rings().filter(ring -> !seen.add(ring.name())).forEach(ring -> twice(ring.name()));
        plan.points().stream().filter(p -> !seen.add(p.name())).forEach(p -> twice(p.name()));
        plan.lines().stream().filter(l -> !seen.add(l.name())).forEach(l -> twice(l.name()));
    }

    private void twice(String name) {
        add(Kind.NAME_TWICE, name, "", new Spot(0, 0));
    }

    private void length(MustLine line) {
        if (line.length() < Mesher.TOUCH) {
            add(Kind.TOO_SHORT, line.name(), "", line.from());
        }
    }

    private void ring(Ring ring) {
        if (ring.corners().size() < 3) {
            Spot at = ring.corners().isEmpty() ? new Spot(0, 0) : ring.corners().getFirst();
            add(Kind.RING_OPEN, ring.name(), "", at);
            return;
        }
        ring.sides().forEach(this::length);
        IsValidOp valid = new IsValidOp(Inside.polygon(ring));
        if (!valid.isValid()) {
            add(
                    Kind.RING_CROSSES_ITSELF,
                    ring.name(),
                    "",
                    spot(valid.getValidationError().getCoordinate()));
        }
    }

    private void places() {
        Polygon outline = Inside.polygon(plan.outline());
        for (int i = 0; i < plan.holes().size(); i++) {
            hole(outline, i);
        }
        plan.regions().forEach(region -> region(outline, region));
        plan.points().forEach(point -> point(outline, point));
        plan.lines().forEach(line -> line(outline, line));
    }

    private void hole(Polygon outline, int number) {
        Ring ring = plan.holes().get(number);
        Polygon hole = Inside.polygon(ring);
        if (!outline.contains(hole) || outline.getBoundary().distance(hole) < Mesher.TOUCH) {
            add(Kind.HOLE_OUTSIDE, ring.name(), "", ring.corners().getFirst());
        }
        for (Ring other : plan.holes().subList(0, number)) {
            if (hole.distance(Inside.polygon(other)) < Mesher.TOUCH) {
                add(
                        Kind.HOLES_OVERLAP,
                        ring.name(),
                        other.name(),
                        ring.corners().getFirst());
            }
        }
    }

    private void region(Polygon outline, Ring ring) {
        away(Inside.polygon(ring).getBoundary().difference(outline), outline)
                .ifPresent(at -> add(Kind.REGION_OUTSIDE, ring.name(), "", at));
    }

    private void point(Polygon outline, MustPoint point) {
        Geometry place = FACTORY.createPoint(coordinate(point.at()));
        if (outline.distance(place) > Mesher.TOUCH) {
            add(Kind.POINT_OUTSIDE, point.name(), "", point.at());
        }
        for (Ring ring : plan.holes()) {
            Polygon hole = Inside.polygon(ring);
            if (hole.contains(place) && hole.getBoundary().distance(place) > Mesher.TOUCH) {
                add(Kind.POINT_IN_HOLE, point.name(), ring.name(), point.at());
            }
        }
    }

    private void line(Polygon outline, MustLine line) {
        Geometry path = FACTORY.createLineString(new Coordinate[] {coordinate(line.from()), coordinate(line.to())});
        away(path.difference(outline), outline).ifPresent(at -> add(Kind.LINE_OUTSIDE, line.name(), "", at));
        for (Ring ring : plan.holes()) {
            Polygon hole = Inside.polygon(ring);
            away(path.intersection(hole), hole.getBoundary())
                    .ifPresent(at -> add(Kind.LINE_CROSSES_HOLE, line.name(), ring.name(), at));
        }
    }

    /** A middle of a piece that lies farther than rounding from a shape. */
    private static Optional<Spot> away(Geometry pieces, Geometry shape) {
        for (int i = 0; i < pieces.getNumGeometries(); i++) {
            Geometry piece = pieces.getGeometryN(i);
            Coordinate[] along = piece.getCoordinates();
            for (int k = 1; k < along.length; k++) {
                Spot middle = spot(along[k - 1]).towards(spot(along[k]), 0.5);
                if (shape.distance(FACTORY.createPoint(coordinate(middle))) > Mesher.TOUCH) {
                    return Optional.of(middle);
                }
            }
        }
        return Optional.empty();
    }

    private static Spot spot(Coordinate at) {
        return new Spot(at.x, at.y);
    }

    private void add(Kind kind, String name, String other, Spot at) {
        faults.add(new MeshFault(kind, name, other, at));
    }
}
