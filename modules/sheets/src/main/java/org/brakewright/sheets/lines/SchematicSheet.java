package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.List;
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

/** The hydraulics as a diagram, drawn from what is joined to what. */
public final class SchematicSheet {
    private static final double FIELD = 57;
    private static final double ROW = 16;
    private static final double WORDS = 2;
    private static final int ACROSS = 3;

    private SchematicSheet() {}

    /** The sheet of any car: of its lines where they are told, else of the usual ones. */
    public static Draft of(Assessment assessment) {
        LinesState lines = assessment.analysis().lines();
        Network network = lines == null ? UsualNetwork.of(assessment.resolved()) : Network.of(lines);
        boolean bar = assessment.resolved().apply() instanceof ResolvedApply.Twin;
        List<String> words = new ArrayList<>(
                List.of(
                        "Symbols after ISO 1219-1. Our own: two short strokes are a bracket or bulkhead, a cross on a stub is a"
                                + " bleeder, the upright line with three rings is the balance bar, pushed at its middle ring.",
                        "Thin straight lines are tube, bowed ones hose. Not to scale; ways and lengths stand on the other sheets."));
        if (lines == null) {
            words.add(
                    "Nobody has told how this car's lines run: drawn is the usual way, a tee in each circuit and a hose to"
                            + " each brake. Two chambers of one master are drawn as two. Tell plumbing to have the car's own.");
        }
        Column column = new Column()
                .add(SchematicPicture.of(network.trees(), bar))
                .heading("Legend")
                .add(legend(network))
                .words(words);
        return new Draft(
                "schematic",
                "hydraulic diagram",
                Draft.Use.SETTING,
                column,
                List.of(lines == null ? "apply.proportioning_valve" : "plumbing"));
    }

    /** Each kind of part that the car has. */
    private static List<Shape> legend(Network network) {
        var kinds = new TreeSet<PartKind>();
        network.parts().values().forEach(part -> kinds.add(part.kind()));
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
