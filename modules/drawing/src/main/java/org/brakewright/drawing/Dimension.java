package org.brakewright.drawing;

/** A size written on the drawing. An empty text stands for the size as drawn. */
public sealed interface Dimension extends Shape {
    /** What a linear dimension measures along. */
    enum Along {
        X,
        Y,
        /** The line from one place to the other. */
        BOTH
    }

    /**
     * A distance.
     *
     * @param offset from the measured places to the dimension line, mm; positive to the left of the way from {@code
     *     from} to {@code to}, which for X means above and for Y means left, whichever place comes first
     */
    record Linear(Point from, Point to, Along along, double offset, String text) implements Dimension {
        public Linear {
            Demand.finite("offset", offset);
        }

        /** Direction measured along, degrees. */
        public double direction() {
            return switch (along) {
                case X -> 0;
                case Y -> 90;
                case BOTH -> from.direction(to);
            };
        }
    }

    /**
     * A radius, told by an arrow on the arc.
     *
     * @param radius mm
     * @param angle where the arrow stands, degrees
     */
    record Radius(Point centre, double radius, double angle, String text) implements Dimension {
        public Radius {
            Demand.positive("radius", radius);
            Demand.finite("angle", angle);
        }
    }

    /**
     * A diameter, told by an arrow on the circle.
     *
     * @param radius mm
     * @param angle where the arrow stands, degrees
     */
    record Diameter(Point centre, double radius, double angle, String text) implements Dimension {
        public Diameter {
            Demand.positive("radius", radius);
            Demand.finite("angle", angle);
        }
    }
}
