package org.brakewright.sheets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** A push at home that proves what was computed: push with a scale here, read a dial gauge there, expect this. */
public final class PushSheet {
    private static final int STEPS = 5;

    /** Height of the picture, mm. */
    private static final double HEIGHT = 70;

    private static final double WORDS = 2.5;
    private static final double DOT = 1.2;
    private static final double GAUGE = 14;

    private PushSheet() {}

    /** The sheet of a car whose mount is told. */
    public static Optional<Draft> of(Assessment assessment) {
        MountState state = assessment.analysis().mount();
        if (state == null) {
            return Optional.empty();
        }
        LoadState use = state.loads().getFirst();
        return assessment.resolved().mount().map(mount -> draft(mount, use));
    }

    private static Draft draft(ResolvedMount mount, LoadState use) {
        Column column = new Column()
                .add(picture(mount))
                .table(List.of(1.4, 1.6, 1.4, 1.6, 1.4, 1.4), rows(use))
                .words(List.of(
                        "Plug the outlets of the masters, so that the fluid holds the rods; without plugs the travel of the"
                                + " brakes is in the reading. Engine off, nobody under the car.",
                        "A: scale between foot and pad, square to the arm. B: gauge on the pad, along the push. C: gauge at"
                                + " the masters' flange, along the rods. Both gauges stand on the floor of the workshop or on a"
                                + " bar across the sills, never on the firewall.",
                        "Read at rest, push, read, let go, read again: what stays is a lasting set and must be nothing. Do it"
                                + " three times and take the middle one.",
                        "More than a third over what is expected: something gives that was not told. Look which place moves,"
                                + " and write the reading into mount.measured.",
                        "Push no harder than the last line for a test. The picture is shortened to the page, from the left of the"
                                + " car."));
        return new Draft("push-and-measure", "push and measure", Draft.Use.SETTING, column, List.of("mount"));
    }

    private static List<List<String>> rows(LoadState use) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("push A", "expect at B", "read at B", "expect at C", "read at C", "after"));
        for (int i = 1; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            rows.add(List.of(
                    Measure.fixed(share * use.footN(), 0) + " N",
                    Measure.fixed(Measure.mm(share * use.padM()), 2) + " mm",
                    "",
                    Measure.fixed(Measure.mm(share * Math.abs(use.flangeM())), 2) + " mm",
                    "",
                    ""));
        }
        return rows;
    }

    /** From the left of the car, its nose to the right, shortened to the page. */
    private static List<Shape> picture(ResolvedMount mount) {
        PedalPoints pedal = mount.pedal();
        double least = mount.structure().panel().outline().stream()
                .mapToDouble(spot -> spot.up())
                .min()
                .orElseThrow();
        double most = mount.structure().panel().outline().stream()
                .mapToDouble(spot -> spot.up())
                .max()
                .orElseThrow();
        double low = Math.min(least, pedal.pad().z());
        double scale = HEIGHT / (Math.max(most, pedal.pivot().z()) - low);
        double tilt = Math.tan(mount.structure().panel().rake());
        var shapes = new ArrayList<Shape>();
        shapes.add(new Line(
                new Point(scale * tilt * least, scale * least),
                new Point(scale * tilt * most, scale * most),
                Stroke.OUTLINE));
        shapes.add(line(pedal.pivot(), pedal.pad(), scale));
        shapes.add(line(pedal.pin(), pedal.socket(), scale));
        dot(pedal.pivot(), "pivot", scale, shapes);
        dot(pedal.pin(), "", scale, shapes);
        mount.structure().stringers().forEach(stringer -> {
            if (stringer.near() instanceof ResolvedMount.Near.OnBracket(String bracket, Place at)) {
                shapes.add(line(at, stringer.body(), scale));
            }
        });
        Point pad = at(pedal.pad(), scale);
        gauge(pad, -1, "A, B", shapes);
        gauge(at(pedal.socket(), scale), 1, "C", shapes);
        shapes.add(Text.of(new Point(scale * tilt * least + 2, scale * least), WORDS, "panel"));
        return shapes;
    }

    private static void gauge(Point at, int side, String name, List<Shape> shapes) {
        Point far = at.plus(side * GAUGE, 0);
        shapes.add(new Line(far, at, Stroke.DIMENSION));
        shapes.add(new Circle(far, 2, Stroke.DIMENSION));
        double words = side < 0 ? -3 - Text.of(far, WORDS, name).width() : 3;
        shapes.add(Text.of(far.plus(words, -1), WORDS, name));
    }

    private static void dot(Place place, String name, double scale, List<Shape> shapes) {
        shapes.add(new Circle(at(place, scale), DOT, Stroke.DIMENSION));
        if (!name.isEmpty()) {
            shapes.add(Text.of(at(place, scale).plus(-14, 1), WORDS, name));
        }
    }

    private static Line line(Place from, Place to, double scale) {
        return new Line(at(from, scale), at(to, scale), Stroke.DIMENSION);
    }

    private static Point at(Place place, double scale) {
        return new Point(scale * place.x(), scale * place.z());
    }
}
