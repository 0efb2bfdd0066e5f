package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.Vertex;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.lines.BendSteps.Step;

/** A tube after each bend, side by side, each fitted into its field: pictures to compare with, not to measure. */
final class BendPicture {
    private static final int ACROSS = 3;
    private static final double FIELD = Column.WIDTH / ACROSS;
    private static final double HEIGHT = 52;
    private static final double MARGIN = 7;
    private static final double WORDS = 2.5;
    private static final double START = 1.2;
    private static final double ARROW = 6;

    private BendPicture() {}

    /** Rows of fields, each a block of its own so that a page can end between them. */
    static List<List<Shape>> of(TubeState tube) {
        List<Step> steps = BendSteps.of(tube);
        List<List<Shape>> rows = new ArrayList<>();
        for (int first = 0; first < steps.size(); first += ACROSS) {
            List<Shape> row = new ArrayList<>();
            for (int i = first; i < Math.min(first + ACROSS, steps.size()); i++) {
                Bounds field = Bounds.at(new Point((i - first) * FIELD, 0), FIELD, HEIGHT);
                row.addAll(field(steps.get(i), title(i, steps.size(), tube), i + 1 == steps.size(), field));
            }
            rows.add(List.copyOf(row));
        }
        return rows;
    }

    private static String title(int step, int steps, TubeState tube) {
        return tube.bends().isEmpty() ? "straight" : "after bend " + (step + 1) + (step + 1 == steps ? ", done" : "");
    }

    private static List<Shape> field(Step step, String title, boolean done, Bounds field) {
        List<Point> flat = Stream.concat(step.bent().stream(), step.straight().stream())
                .map(Isometric::of)
                .toList();
        Fit fit = Fit.of(flat, field);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(field.outline(Stroke.FRAME));
        shapes.add(Text.of(new Point(field.minX() + 2, field.maxY() - 2 - WORDS), WORDS, title));
        if (step.bent().size() > 1) {
            shapes.add(line(step.bent(), fit, Stroke.OUTLINE));
        }
        shapes.add(line(step.straight(), fit, done ? Stroke.OUTLINE : Stroke.HIDDEN));
        shapes.add(new Circle(fit.of(flat.getFirst()), START, Stroke.DIMENSION));
        axes(new Point(field.maxX() - 11, field.minY() + 8), shapes);
        return shapes;
    }

    private static Polyline line(List<Spot> spots, Fit fit, Stroke stroke) {
        return new Polyline(
                spots.stream()
                        .map(spot -> fit.of(Isometric.of(spot)))
                        .map(point -> Vertex.of(point.x(), point.y()))
                        .toList(),
                false,
                stroke);
    }

    private static void axes(Point zero, List<Shape> shapes) {
        axis(zero, new Spot(1, 0, 0), "forward", Align.RIGHT, shapes);
        axis(zero, new Spot(0, 1, 0), "left", Align.CENTER, shapes);
        axis(zero, new Spot(0, 0, 1), "up", Align.CENTER, shapes);
    }

    private static void axis(Point zero, Spot way, String name, Align align, List<Shape> shapes) {
        Point along = Isometric.of(way);
        shapes.add(new Line(zero, zero.plus(ARROW * along.x(), ARROW * along.y()), Stroke.DIMENSION));
        double below = along.y() < 0 ? -1.6 : 1;
        shapes.add(Text.of(zero.plus(ARROW * along.x(), ARROW * along.y() + below), 1.6, name)
                .aligned(align));
    }

    /** From m to mm of a field, the picture in its middle. */
    private record Fit(double scale, Point middle, Point to) {
        static Fit of(List<Point> points, Bounds field) {
            double left = points.stream().mapToDouble(Point::x).min().orElse(0);
            double right = points.stream().mapToDouble(Point::x).max().orElse(0);
            double low = points.stream().mapToDouble(Point::y).min().orElse(0);
            double high = points.stream().mapToDouble(Point::y).max().orElse(0);
            double across = (field.width() - 2 * MARGIN) / Math.max(right - left, 1e-6);
            double upward = (field.height() - 3 * MARGIN) / Math.max(high - low, 1e-6);
            return new Fit(
                    Math.min(across, upward),
                    new Point((left + right) / 2, (low + high) / 2),
                    new Point((field.minX() + field.maxX()) / 2, (field.minY() + field.maxY()) / 2));
        }

        Point of(Point point) {
            return to.plus(scale * (point.x() - middle.x()), scale * (point.y() - middle.y()));
        }
    }
}
