package org.brakewright.sheets.shop;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.shop.ShopState;
import org.brakewright.analysis.shop.ShopState.BendLine;
import org.brakewright.analysis.shop.ShopState.FlatHole;
import org.brakewright.analysis.shop.ShopState.FlatPart;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** A folded part laid flat: cut, drill, then bend on the lines. */
public final class FlatSheet {
    private FlatSheet() {}

    /** One sheet a part. */
    public static List<Draft> of(Assessment assessment) {
        ShopState shop = assessment.analysis().shop();
        var drafts = new ArrayList<Draft>();
        for (FlatPart part : shop == null ? List.<FlatPart>of() : shop.folded()) {
            drafts.add(draft(part, drafts.size()));
        }
        return List.copyOf(drafts);
    }

    private static Draft draft(FlatPart part, int index) {
        Column column = new Column()
                .add(FlatPicture.of(part))
                .heading("Bends, from the left end")
                .table(List.of(1.0, 2.0, 2.0, 2.0, 2.0), bends(part));
        if (!part.holes().isEmpty()) {
            column.heading("Holes, from the lower left corner").table(List.of(1.0, 2.0, 2.0, 2.0, 2.0), holes(part));
        }
        column.words(List.of(
                "Sheet " + Measure.both(part.thicknessM()) + ", inside radius " + Measure.both(part.insideRadiusM())
                        + ", K-factor " + Measure.fixed(part.kFactor(), 2)
                        + ". Bend a test strip of the same sheet first: where its legs come out otherwise, the K-factor is not yours.",
                "Dashed lines are the ends of each bend, the chain line its middle. Up is toward you."));
        return new Draft(
                "flat-" + (index + 1),
                part.name() + ", flat pattern",
                Draft.Use.TEMPLATE,
                column,
                List.of("shop.folded[" + index + "]", "shop.k_factor"));
    }

    private static List<List<String>> bends(FlatPart part) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("bend", "begins", "middle", "ends", "angle"));
        for (BendLine bend : part.bends()) {
            rows.add(List.of(
                    "" + rows.size(),
                    Measure.metric(bend.startM()),
                    Measure.both(bend.middleM()),
                    Measure.metric(bend.endM()),
                    FlatPicture.way(bend)));
        }
        return rows;
    }

    private static List<List<String>> holes(FlatPart part) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("hole", "along", "across", "diameter", "edge to bend"));
        for (FlatHole hole : part.holes()) {
            rows.add(List.of(
                    "" + rows.size(),
                    Measure.both(hole.alongM()),
                    Measure.both(hole.acrossM()),
                    Measure.both(hole.diameterM()),
                    Double.isInfinite(hole.toBendM()) ? "-" : Measure.metric(hole.toBendM())));
        }
        return rows;
    }
}
