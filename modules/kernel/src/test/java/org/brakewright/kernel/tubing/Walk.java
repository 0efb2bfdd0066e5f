package org.brakewright.kernel.tubing;

import java.util.ArrayList;
import java.util.List;

/**
 * A folded strip in its own side view: walks along the unstretched layer and round each bend's own centre, and finds the
 * outside corners by crossing the outer faces of neighbouring legs.
 *
 * @param corners with both free ends
 * @param directions of the legs, rad
 */
record Walk(List<Spot> corners, List<Double> directions) {
    record Spot(double x, double y) {
        Spot moved(double length, double direction) {
            return new Spot(x + length * Math.cos(direction), y + length * Math.sin(direction));
        }

        double along(Spot from, double direction) {
            return (x - from.x) * Math.cos(direction) + (y - from.y) * Math.sin(direction);
        }
    }

    /** A straight outer face: a spot on it and its direction. */
    private record Face(Spot at, double direction) {
        Spot meets(Face other) {
            double dx = other.at.x - at.x;
            double dy = other.at.y - at.y;
            double turn = Math.sin(other.direction - direction);
            double along = (dx * Math.sin(other.direction) - dy * Math.cos(other.direction)) / turn;
            return at.moved(along, direction);
        }
    }

    static Walk of(FoldedStrip strip) {
        double layer = strip.bend().insideRadius()
                + strip.bend().kFactor() * strip.bend().thickness();
        Spot at = new Spot(0, 0);
        double direction = 0;
        List<Spot> corners = new ArrayList<>(List.of(at));
        List<Double> directions = new ArrayList<>(List.of(direction));
        for (int i = 0; i < strip.angles().size(); i++) {
            double inward = Math.signum(strip.angles().get(i)) * Math.PI / 2;
            Spot centre = at.moved(strip.flats().get(i), direction).moved(layer, direction + inward);
            double after = direction + strip.angles().get(i);
            corners.add(face(centre, strip.bend(), direction, inward).meets(face(centre, strip.bend(), after, inward)));
            at = centre.moved(-layer, after + inward);
            direction = after;
            directions.add(direction);
        }
        corners.add(at.moved(strip.flats().getLast(), direction));
        return new Walk(corners, directions);
    }

    /** A leg (m) from corner to corner, along itself. */
    double leg(int index) {
        return corners.get(index + 1).along(corners.get(index), directions.get(index));
    }

    private static Face face(Spot centre, SheetBend bend, double direction, double inward) {
        return new Face(centre.moved(-bend.insideRadius() - bend.thickness(), direction + inward), direction);
    }
}
