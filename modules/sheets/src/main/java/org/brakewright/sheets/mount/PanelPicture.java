package org.brakewright.sheets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Hole;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Spot;
import org.brakewright.model.resolved.ResolvedMount.Structure;
import org.brakewright.sheets.Measure;

/**
 * Sheets of a mount at true scale, seen from the driver: the car's left is on the left, so across counts to the left. The
 * builder's zero is the origin.
 */
final class PanelPicture {
    private static final double WORDS = 2.5;
    private static final double CROSS = 3;
    private static final double ZERO = 8;
    private static final double BESIDE = 10;

    private final Structure structure;
    private final List<Shape> shapes = new ArrayList<>();

    private PanelPicture(Structure structure) {
        this.structure = structure;
    }

    /** A hole to drill or cut. */
    record Drilled(String name, Spot middle, double diameter) {}

    /** The panel with all that is cut into it, drilled through it and laid on it. */
    static List<Shape> panel(Structure structure) {
        PanelPicture picture = new PanelPicture(structure);
        picture.outline(structure.panel().outline(), Stroke.OUTLINE);
        for (Plate plate : structure.plates()) {
            picture.outline(plate.outline(), Stroke.HIDDEN);
            picture.label(plate.outline(), plate.name());
        }
        drilled(structure, spot -> true).forEach(picture::hole);
        picture.welds();
        picture.feet();
        picture.zero();
        picture.sizes(structure.panel().outline());
        return picture.shapes;
    }

    /** A patch or doubler with what goes through it. */
    static List<Shape> plate(Structure structure, Plate plate) {
        PanelPicture picture = new PanelPicture(structure);
        picture.outline(plate.outline(), Stroke.OUTLINE);
        drilled(structure, spot -> inside(spot, plate.outline())).forEach(picture::hole);
        if (inside(new Spot(0, 0), plate.outline())) {
            picture.zero();
        }
        picture.sizes(plate.outline());
        return picture.shapes;
    }

    /** Holes of the panel and of bolts at some places, in the build file's order. */
    static List<Drilled> drilled(Structure structure, Predicate<Spot> where) {
        List<Drilled> all = new ArrayList<>();
        List<Hole> holes = structure.panel().holes();
        for (int i = 0; i < holes.size(); i++) {
            all.add(new Drilled(
                    "hole " + (i + 1), holes.get(i).middle(), holes.get(i).diameter()));
        }
        for (Bracket bracket : structure.brackets()) {
            bracket.bolts().ifPresent(bolts -> {
                for (int i = 0; i < bolts.positions().size(); i++) {
                    all.add(new Drilled(
                            bracket.name() + ", bolt " + (i + 1),
                            bolts.positions().get(i),
                            bolts.hole()));
                }
            });
        }
        return all.stream().filter(each -> where.test(each.middle())).toList();
    }

    static boolean inside(Spot spot, List<Spot> outline) {
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            Spot a = outline.get(i);
            Spot b = outline.get((i + 1) % outline.size());
            boolean between = a.up() > spot.up() != b.up() > spot.up();
            if (between
                    && spot.across()
                            < a.across() + (spot.up() - a.up()) / (b.up() - a.up()) * (b.across() - a.across())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** A place of the panel on the paper. */
    static Point place(Spot spot) {
        return Measure.place(-spot.across(), spot.up());
    }

    private void outline(List<Spot> outline, Stroke stroke) {
        shapes.add(Polyline.closed(
                stroke, outline.stream().map(PanelPicture::place).toArray(Point[]::new)));
    }

    private void label(List<Spot> outline, String name) {
        Point corner = outline.stream()
                .map(PanelPicture::place)
                .min((a, b) -> Double.compare(a.x() - a.y(), b.x() - b.y()))
                .orElseThrow();
        shapes.add(Text.of(corner.plus(2, -2 - WORDS), WORDS, name));
    }

    private void hole(Drilled hole) {
        Point middle = place(hole.middle());
        double radius = Measure.mm(hole.diameter()) / 2;
        shapes.add(new Circle(middle, radius, Stroke.HOLE));
        double arm = radius + CROSS;
        shapes.add(new Line(middle.plus(-arm, 0), middle.plus(arm, 0), Stroke.CENTRE));
        shapes.add(new Line(middle.plus(0, -arm), middle.plus(0, arm), Stroke.CENTRE));
        shapes.add(new Dimension.Diameter(middle, radius, 45, ""));
    }

    private void welds() {
        for (Bracket bracket : structure.brackets()) {
            bracket.welds().forEach(weld -> {
                Point from = place(weld.from());
                shapes.add(new Line(from, place(weld.to()), Stroke.BEND));
                shapes.add(Text.of(from.plus(2, 1), WORDS, "weld, leg " + Measure.metric(weld.leg())));
            });
        }
    }

    private void feet() {
        structure.stringers().forEach(stringer -> {
            if (stringer.near() instanceof Near.OnPanel(Spot spot, double foot)) {
                double radius = Measure.mm(foot) / 2;
                shapes.add(new Circle(place(spot), radius, Stroke.HIDDEN));
                shapes.add(Text.of(place(spot).plus(radius + 1, 1), WORDS, "foot of " + stringer.name()));
            }
        });
    }

    private void zero() {
        shapes.add(new Line(new Point(-ZERO, 0), new Point(ZERO, 0), Stroke.DIMENSION));
        shapes.add(new Line(new Point(0, -ZERO), new Point(0, ZERO), Stroke.DIMENSION));
        shapes.add(new Text(new Point(1, -ZERO), WORDS, "zero", Align.LEFT, 0, Layer.TEXT));
    }

    /** Width below and height to the right. */
    private void sizes(List<Spot> outline) {
        List<Point> corners = outline.stream().map(PanelPicture::place).toList();
        double left = least(corners.stream().map(Point::x));
        double right = -least(corners.stream().map(point -> -point.x()));
        double bottom = least(corners.stream().map(Point::y));
        double top = -least(corners.stream().map(point -> -point.y()));
        shapes.add(new Dimension.Linear(
                new Point(left, bottom), new Point(right, bottom), Dimension.Along.X, -BESIDE, ""));
        shapes.add(
                new Dimension.Linear(new Point(right, bottom), new Point(right, top), Dimension.Along.Y, -BESIDE, ""));
    }

    private static double least(Stream<Double> values) {
        return values.mapToDouble(Double::doubleValue).min().orElseThrow();
    }
}
