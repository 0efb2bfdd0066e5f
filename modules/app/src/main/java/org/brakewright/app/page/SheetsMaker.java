package org.brakewright.app.page;

import java.util.List;
import org.brakewright.app.words.Show;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Extent;
import org.brakewright.quantity.Dimension;
import org.brakewright.sheets.Sheet;

/** Tells the page which sheets there are. */
public final class SheetsMaker {
    private static final double METRE = 1e-3;

    private final Show show;

    /** Makes views in a system of units. */
    public SheetsMaker(Show show) {
        this.show = show;
    }

    /** The view of a car's sheets at a revision of the build file. */
    public SheetsView make(List<Sheet> sheets, int revision) {
        return new SheetsView(
                revision, advice(sheets), sheets.stream().map(this::view).toList());
    }

    private static String advice(List<Sheet> sheets) {
        long forbidden = sheets.stream().filter(Sheet::forbidden).count();
        String stamped = forbidden == 0
                ? ""
                : " Stamped, and not to be worked from: " + forbidden + " of " + sheets.size() + ".";
        return "Print at 100 % and lay a ruler on the check bars before anything is cut." + stamped;
    }

    private SheetsView.SheetView view(Sheet sheet) {
        Drawing drawing = sheet.drawing();
        Bounds reach = Extent.of(drawing.shapes());
        return new SheetsView.SheetView(
                sheet.key(),
                drawing.title().title(),
                drawing.title().type(),
                length(reach.width()) + " by " + length(reach.height()),
                drawing.stamp());
    }

    private String length(double millimetre) {
        return show.value(millimetre * METRE, Dimension.LENGTH);
    }
}
