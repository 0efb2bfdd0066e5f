package org.brakewright.drawing.page;

import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Point;

/** A sheet of paper, upright or on its side; places are told from its lower left corner, mm. */
public record Sheet(Paper paper, boolean landscape) {
    /** The whole sheet. */
    public Bounds media() {
        return Bounds.at(new Point(0, 0), side(paper, landscape), side(paper, !landscape));
    }

    /** All that is printed lies in here. */
    public Bounds frame() {
        double width = Math.min(side(paper, landscape), side(paper.partner(), landscape)) - 2 * Paper.MARGIN;
        double height = Math.min(side(paper, !landscape), side(paper.partner(), !landscape)) - 2 * Paper.MARGIN;
        return Bounds.around(media().middle(), width, height);
    }

    /** Where the drawing shows: the frame without the strips for check bars and title. */
    public Bounds window() {
        return Furniture.window(frame());
    }

    private static double side(Paper paper, boolean longer) {
        return longer ? paper.height() : paper.width();
    }
}
