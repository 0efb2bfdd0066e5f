package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Text;
import org.brakewright.findings.Assessment;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.lines.Network.Branch;

/** The hydraulics as a diagram, drawn from what is joined to what. */
public final class SchematicSheet {
    private static final double FIELD = 57;
    private static final double ROW = 16;
    private static final double WORDS = 2;
    private static final int ACROSS = 3;

    private SchematicSheet() {}

    /** The sheet of a car whose lines are told. */
    public static Optional<Draft> of(Assessment assessment) {
        LinesState lines = assessment.analysis().lines();
        return lines == null
                ? Optional.empty()
                : Optional.of(draft(lines, assessment.resolved().apply()));
    }

    private static Draft draft(LinesState lines, ResolvedApply apply) {
        List<Branch> trees = Network.of(lines).trees();
        boolean bar = apply instanceof ResolvedApply.Twin;
        Column column = new Column()
                .add(SchematicPicture.of(trees, bar))
                .heading("Legend")
                .add(legend(lines))
                .words(
                        List.of(
                                "Symbols after ISO 1219-1. Our own: two short strokes are a bracket or bulkhead, a cross on a stub is a"
                                        + " bleeder, the upright line with three rings is the balance bar, pushed at its middle ring.",
                                "Thin straight lines are tube, bowed ones hose. Not to scale; ways and lengths stand on the other sheets."));
        return new Draft("schematic", "hydraulic diagram", Draft.Use.SETTING, column, List.of("plumbing"));
    }

    /** Each kind of part that the car has. */
    private static List<Shape> legend(LinesState lines) {
        var kinds = new TreeSet<PartKind>();
        lines.parts().forEach(part -> kinds.add(part.kind()));
        List<Shape> shapes = new ArrayList<>();
        int number = 0;
        for (PartKind kind : kinds) {
            double x = FIELD * (number % ACROSS) + 20;
            int row = number / ACROSS;
            double y = -ROW * row;
            shapes.add(new Figure(Symbols.of(kind), Placement.at(x, y)));
            shapes.add(Text.of(new Point(x + 16, y - 1), WORDS, LineWords.plain(kind.name())));
            number++;
        }
        return List.copyOf(shapes);
    }
}
