package org.brakewright.sheets.shop;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.shop.ShopState;
import org.brakewright.analysis.shop.ShopState.EdgePoint;
import org.brakewright.analysis.shop.ShopState.Saddle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.Vertex;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** The paper that is wrapped round the end of a tube so that it can be notched to meet another. */
public final class SaddleSheet {
    /** Paper left above the highest point of the edge, mm. */
    private static final double GRIP = 30;

    private static final double WORDS = 2.5;
    private static final List<String> QUARTERS = List.of("leans over", "offset side", "far side", "other side");

    private SaddleSheet() {}

    /** One sheet a joint. */
    public static List<Draft> of(Assessment assessment) {
        ShopState shop = assessment.analysis().shop();
        var drafts = new ArrayList<Draft>();
        for (Saddle saddle : shop == null ? List.<Saddle>of() : shop.saddles()) {
            drafts.add(draft(saddle, drafts.size()));
        }
        return List.copyOf(drafts);
    }

    private static Draft draft(Saddle saddle, int index) {
        Column column = new Column()
                .add(picture(saddle))
                .table(List.of(1.0, 1.0), table(saddle))
                .words(List.of(
                        "Cut along the curve, wrap the paper round the tube with the words outside and both short edges"
                                + " meeting, mark the curve and notch to it. The curve is the outside of the tube: a thick"
                                + " wall leaves a gap inside that is filed to fit.",
                        "The line marked \"leans over\" lies on the side where the tubes make the smaller angle."));
        return new Draft(
                "saddle-" + (index + 1),
                saddle.name() + ", saddle",
                Draft.Use.TEMPLATE,
                column,
                List.of("shop.joints[" + index + "]"));
    }

    private static List<Shape> picture(Saddle saddle) {
        double width = Math.PI * Measure.mm(saddle.branchDiameterM());
        double top = Measure.mm(
                        saddle.edge().stream().mapToDouble(EdgePoint::upM).max().orElseThrow())
                + GRIP;
        var shapes = new ArrayList<Shape>();
        shapes.add(paper(saddle, width, top));
        for (int quarter = 0; quarter < QUARTERS.size(); quarter++) {
            double x = width * quarter / QUARTERS.size();
            int at = (saddle.edge().size() - 1) * quarter / QUARTERS.size();
            Point edge = new Point(x, Measure.mm(saddle.edge().get(at).upM()));
            shapes.add(new Line(edge, new Point(x, top), Stroke.CENTRE));
            shapes.add(Text.of(new Point(x + 1, top - 5), WORDS, QUARTERS.get(quarter))
                    .within(width / 4 - 2));
        }
        shapes.add(new Dimension.Linear(new Point(0, top), new Point(width, top), Dimension.Along.X, 8, ""));
        return shapes;
    }

    /** The curve below, straight above: the tube's end is where the curve is. */
    private static Polyline paper(Saddle saddle, double width, double top) {
        var corners = new ArrayList<Vertex>();
        saddle.edge().forEach(point -> corners.add(Vertex.of(Measure.mm(point.acrossM()), Measure.mm(point.upM()))));
        corners.add(Vertex.of(width, top));
        corners.add(Vertex.of(0, top));
        return new Polyline(corners, true, Stroke.OUTLINE);
    }

    private static List<List<String>> table(Saddle saddle) {
        return List.of(
                List.of("what", "size"),
                List.of("tube that is notched, outside", Measure.both(saddle.branchDiameterM())),
                List.of("tube it meets, outside", Measure.both(saddle.mainDiameterM())),
                List.of("angle between the tubes", Measure.degrees(saddle.angleRad())),
                List.of("offset of their axes", Measure.both(saddle.offsetM())),
                List.of("once round the tube", Measure.both(Math.PI * saddle.branchDiameterM())));
    }
}
