package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.Bar;
import org.brakewright.analysis.lines.LinesState.CutState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** What is cut of which length of stock. */
public final class CutSheet {
    private static final double BAR = 7;
    private static final double WORDS = 2;

    private CutSheet() {}

    /** The sheet of a car with tubes. */
    public static Optional<Draft> of(Assessment assessment) {
        LinesState lines = assessment.analysis().lines();
        return lines == null || lines.cuts().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        draft(lines, assessment.resolved().lines().orElseThrow().sawCut()));
    }

    private static Draft draft(LinesState lines, double sawCut) {
        List<TubeState> tubes = lines.tubes();
        Column column = new Column();
        for (CutState cut : lines.cuts()) {
            column.heading(LineWords.plain(cut.material()) + " tube, " + Measure.both(cut.outsideDiameterM())
                    + ", wall " + Measure.fixed(Measure.mm(cut.wallM()), 2) + " mm");
            cut.bars().forEach(bar -> column.add(picture(bar, tubes)));
            column.table(List.of(0.8, 3.0, 2.0), rows(cut, tubes))
                    .words(List.of("Bought " + Measure.metric(cut.boughtM())
                            + ", the least that any plan can do with is " + Measure.metric(cut.leastM()) + "."));
        }
        column.words(List.of(
                "Bars are drawn shortened. Each cut is taken to lose " + Measure.metric(sawCut) + "; cut square."));
        return new Draft("tube-cut-list", "tube cut list", Draft.Use.CUTTING, column, List.of("plumbing.tubes"));
    }

    /** A length of stock, shortened to the width of the page, with its pieces in order. */
    private static List<Shape> picture(Bar bar, List<TubeState> tubes) {
        var shapes = new ArrayList<Shape>();
        double scale = Column.WIDTH / bar.stockM();
        double at = 0;
        int number = 0;
        for (String name : bar.tubes()) {
            double length = cut(tubes, name);
            Bounds piece = Bounds.at(new Point(scale * at, 0), scale * length, BAR);
            shapes.add(piece.outline(Stroke.OUTLINE));
            number++;
            shapes.add(Text.of(new Point((piece.minX() + piece.maxX()) / 2, BAR / 2 - WORDS / 2), WORDS, "" + number)
                    .aligned(Align.CENTER));
            at += length;
        }
        shapes.add(Bounds.at(new Point(scale * at, 0), Column.WIDTH - scale * at, BAR)
                .outline(Stroke.HIDDEN));
        return shapes;
    }

    private static List<List<String>> rows(CutState cut, List<TubeState> tubes) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("piece", "tube", "cut to"));
        for (int i = 0; i < cut.bars().size(); i++) {
            Bar bar = cut.bars().get(i);
            for (int piece = 0; piece < bar.tubes().size(); piece++) {
                String name = bar.tubes().get(piece);
                String number = (cut.bars().size() == 1 ? "" : "bar " + (i + 1) + ", ") + (piece + 1);
                rows.add(List.of(number, name, Measure.both(cut(tubes, name))));
            }
            rows.add(List.of("", "left over of " + Measure.metric(bar.stockM()), Measure.both(bar.leftM())));
        }
        return rows;
    }

    private static double cut(List<TubeState> tubes, String name) {
        return tubes.stream()
                .filter(tube -> tube.name().equals(name))
                .mapToDouble(TubeState::cutM)
                .findFirst()
                .orElseThrow();
    }
}
