package org.brakewright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.TitleBlock;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.sheets.balance.BarSheet;
import org.brakewright.sheets.footwell.FootwellSheet;
import org.brakewright.sheets.lines.BendSheet;
import org.brakewright.sheets.lines.CutSheet;
import org.brakewright.sheets.lines.FittingSheet;
import org.brakewright.sheets.lines.SchematicSheet;
import org.brakewright.sheets.mount.BarsSheet;
import org.brakewright.sheets.mount.PanelSheet;
import org.brakewright.sheets.mount.PushSheet;
import org.brakewright.sheets.pedal.ArmSheet;
import org.brakewright.sheets.pedal.RodSheet;
import org.brakewright.sheets.shop.FlatSheet;
import org.brakewright.sheets.shop.SaddleSheet;

/** Every sheet that a car's data allow. */
public final class Sheets {
    private static final List<String> CAUTIONS = List.of(
            "Lay a ruler on the check bars before anything is cut: where they are not true, print again at 100 %.",
            "Never drive with: a rod that can come off, no free play, a bar or pedal that does not come back, a leak,"
                    + " a pedal that sinks within 10 s, rear wheels that lock first, brake lights that stay dark.",
            "Local rules and whoever inspects the car have the last word.");

    private Sheets() {}

    /** The sheets of a car, in the order in which they are used. */
    public static List<Sheet> of(Assessment assessment, Issue issue, Wording wording) {
        List<Draft> drafts = drafts(assessment);
        var sheets = new ArrayList<Sheet>();
        for (Draft draft : drafts) {
            String place = (sheets.size() + 1) + " of " + drafts.size();
            sheets.add(sheet(draft, assessment, title(draft, assessment, issue, place), wording));
        }
        return List.copyOf(sheets);
    }

    private static List<Draft> drafts(Assessment assessment) {
        return Stream.of(
                        ArmSheet.of(assessment),
                        RodSheet.of(assessment),
                        BarSheet.of(assessment).stream().toList(),
                        FootwellSheet.of(assessment),
                        PanelSheet.of(assessment),
                        BarsSheet.of(assessment).stream().toList(),
                        FlatSheet.of(assessment),
                        SaddleSheet.of(assessment),
                        PushSheet.of(assessment).stream().toList(),
                        List.of(SchematicSheet.of(assessment)),
                        BendSheet.of(assessment),
                        CutSheet.of(assessment).stream().toList(),
                        FittingSheet.of(assessment).stream().toList())
                .flatMap(List::stream)
                .toList();
    }

    private static Sheet sheet(Draft draft, Assessment assessment, TitleBlock title, Wording wording) {
        List<Finding> forbidding = forbidding(draft, assessment);
        Column column = draft.column();
        if (!forbidding.isEmpty()) {
            column.heading("What forbids it")
                    .words(forbidding.stream().map(wording::sentence).toList());
        }
        List<Drawing> drawings = column.words(CAUTIONS).pages().stream()
                .map(shapes -> Drawing.of(title, shapes))
                .map(drawing -> forbidding.isEmpty() ? drawing : drawing.stamped(stamp(draft, forbidding, wording)))
                .toList();
        return new Sheet(draft.key(), drawings);
    }

    /** The stops whose inputs the draft is drawn from. */
    private static List<Finding> forbidding(Draft draft, Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.state() == State.STOP)
                .filter(finding -> finding.inputs().stream().anyMatch(draft::follows))
                .toList();
    }

    private static String stamp(Draft draft, List<Finding> forbidding, Wording wording) {
        String more = forbidding.size() == 1 ? "" : " and " + (forbidding.size() - 1) + " more";
        return draft.use().forbids() + ": " + wording.title(forbidding.getFirst()) + more;
    }

    private static TitleBlock title(Draft draft, Assessment assessment, Issue issue, String place) {
        String car = assessment.build().name();
        return new TitleBlock(
                issue.owner(),
                car + ": " + draft.title(),
                number(car) + "-" + draft.key(),
                issue.issued(),
                place,
                issue.creator(),
                "",
                draft.use().words());
    }

    private static String number(String car) {
        String plain =
                car.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "car" : plain;
    }
}
