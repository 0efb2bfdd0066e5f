package org.brakewright.sheets;

import java.util.List;
import org.brakewright.drawing.Drawing;

/**
 * One sheet.
 *
 * @param key name of its files, lower case with hyphens
 * @param drawings at true scale, what is cut or set first, then what has to be said; stamped where a finding forbids it
 */
public record Sheet(String key, List<Drawing> drawings) {
    public Sheet {
        drawings = List.copyOf(drawings);
    }

    /** What is cut or set. */
    public Drawing drawing() {
        return drawings.getFirst();
    }

    /** Whether a finding forbids to work from it. */
    public boolean forbidden() {
        return drawing().stamp() != null;
    }
}
