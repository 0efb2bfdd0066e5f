package org.brakewright.drawing;

import java.util.List;

/**
 * How a line is broken. Lengths are those of ISO 128-2 (from memory): dash 12, long dash 24, short dash 6, gap 3 line
 * widths. The chain line has short dashes where ISO has dots: a dot half a line wide does not survive a shop printer.
 */
public enum LineKind {
    CONTINUOUS,
    DASHED,
    CHAIN,
    /** For bend lines; common practice, no source. */
    DOUBLE_CHAIN;

    /** Lengths of dashes and gaps in turn, in line widths; empty for a continuous line. */
    public List<Integer> pattern() {
        return switch (this) {
            case CONTINUOUS -> List.of();
            case DASHED -> List.of(12, 3);
            case CHAIN -> List.of(24, 3, 6, 3);
            case DOUBLE_CHAIN -> List.of(24, 3, 6, 3, 6, 3);
        };
    }
}
