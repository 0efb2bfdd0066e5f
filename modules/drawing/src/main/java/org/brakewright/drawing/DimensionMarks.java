package org.brakewright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Dimensions as marks: extension lines, dimension line, open arrows of 30 degrees, words that can be read from below or
 * from the right.
 */
final class DimensionMarks {
    private static final double TEXT_HEIGHT = 2.5;
    private static final double ABOVE_LINE = 0.8;
    private static final double ARROW = 2.5;
    private static final double HALF_ARROW_ANGLE = 15;
    private static final double GAP_AT_PART = 1;
    private static final double BEYOND_LINE = 1.5;
    private static final double LEADER = 7;

    /** Sizes are written to 0.01 mm: finer than any shop that cuts by a paper template. */
    private static final int PLACES = 2;

    private DimensionMarks() {}

    static List<Mark> of(Dimension dimension) {
        return switch (dimension) {
            case Dimension.Linear linear -> linear(linear);
            case Dimension.Radius radius -> {
                Point tip = radius.centre().polar(radius.radius(), radius.angle());
                String words = words(radius.text(), "R", radius.radius());
                yield leader(radius.centre(), tip, radius.angle(), words);
            }
            case Dimension.Diameter diameter -> {
                Point tip = diameter.centre().polar(diameter.radius(), diameter.angle());
                String words = words(diameter.text(), "\u2300", 2 * diameter.radius());
                yield leader(tip, tip, diameter.angle(), words);
            }
        };
    }

    private static List<Mark> linear(Dimension.Linear linear) {
        double direction = linear.direction();
        double first = left(linear.from(), direction);
        double second = left(linear.to(), direction);
        double line = linear.offset() + (linear.offset() < 0 ? Math.min(first, second) : Math.max(first, second));
        Point from = linear.from().polar(line - first, direction + 90);
        Point to = linear.to().polar(line - second, direction + 90);
        var marks = new ArrayList<Mark>();
        extension(linear.from(), from, marks);
        extension(linear.to(), to, marks);
        String words = words(linear.text(), "", from.distance(to));
        span(from, to, readable(direction), words, marks);
        return marks;
    }

    /** How far a place stands to the left of a line through the origin. */
    private static double left(Point point, double direction) {
        double angle = Math.toRadians(direction);
        return point.y() * Math.cos(angle) - point.x() * Math.sin(angle);
    }

    private static void extension(Point part, Point line, List<Mark> marks) {
        double length = part.distance(line);
        if (length > GAP_AT_PART) {
            double direction = part.direction(line);
            marks.add(new Line(
                    part.polar(GAP_AT_PART, direction), part.polar(length + BEYOND_LINE, direction), Stroke.DIMENSION));
        }
    }

    /** Arrows stand inside; where there is no room for them, outside, and the words behind the far one. */
    private static void span(Point from, Point to, double rotation, String words, List<Mark> marks) {
        double direction = from.direction(to);
        double length = from.distance(to);
        Text text = text(new Point(0, 0), words, rotation);
        boolean roomy = length >= Math.max(text.width() + 2, 3 * ARROW);
        double outside = roomy ? 0 : 2 * ARROW + text.width();
        Point beyond = to.polar(outside, direction);
        Point middle = roomy ? from.polar(length / 2, direction) : to.polar(2 * ARROW + text.width() / 2, direction);
        marks.add(new Line(roomy ? from : from.polar(-2 * ARROW, direction), beyond, Stroke.DIMENSION));
        arrow(from, roomy ? direction : direction + 180, marks);
        arrow(to, roomy ? direction + 180 : direction, marks);
        marks.add(text(middle.polar(ABOVE_LINE, rotation + 90), words, rotation));
    }

    private static List<Mark> leader(Point start, Point tip, double angle, String words) {
        var marks = new ArrayList<Mark>();
        Point knee = tip.polar(LEADER, angle);
        boolean leftwards = Math.cos(Math.toRadians(angle)) < 0;
        Text text = text(knee, words, 0).aligned(leftwards ? Align.RIGHT : Align.LEFT);
        Point end = knee.plus((leftwards ? -1 : 1) * text.width(), 0);
        marks.add(new Line(start, knee, Stroke.DIMENSION));
        marks.add(new Line(knee, end, Stroke.DIMENSION));
        arrow(tip, angle, marks);
        marks.add(new Text(knee.plus(0, ABOVE_LINE), TEXT_HEIGHT, words, text.align(), 0, Layer.DIMENSION));
        return marks;
    }

    /** The barbs of an arrow whose shaft leads from its tip into a direction. */
    private static void arrow(Point tip, double shaft, List<Mark> marks) {
        marks.add(Polyline.open(
                Stroke.DIMENSION,
                tip.polar(ARROW, shaft + HALF_ARROW_ANGLE),
                tip,
                tip.polar(ARROW, shaft - HALF_ARROW_ANGLE)));
    }

    private static Text text(Point anchor, String words, double rotation) {
        return new Text(anchor, TEXT_HEIGHT, words, Align.CENTER, rotation, Layer.DIMENSION);
    }

    private static String words(String text, String sign, double size) {
        return text.isEmpty() ? sign + Decimal.text(size, PLACES) : text;
    }

    /** The same line, told by an angle in (-90, 90]. */
    private static double readable(double direction) {
        double angle = direction % 180;
        if (angle > 90) {
            return angle - 180;
        }
        return angle <= -90 ? angle + 180 : angle;
    }
}
