package org.brakewright.drawing.page;

import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Mark;

/**
 * What a writer writes as one page.
 *
 * @param name short name, unique in its drawing
 * @param media the paper, mm
 * @param window where the artwork shows; what reaches beyond is cut off
 * @param artwork the drawing, or its part
 * @param furniture frame, check bars, title block
 */
public record Page(String name, Bounds media, Bounds window, List<Mark> artwork, List<Mark> furniture) {
    public Page {
        artwork = List.copyOf(artwork);
        furniture = List.copyOf(furniture);
    }
}
