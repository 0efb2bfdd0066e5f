package org.brakewright.drawing;

import java.util.List;

/**
 * How a line is drawn, and what for. Edges are 0.35 mm and all else 0.18 mm wide: on a template a cut follows the
 * middle of the line, and a wide line hides it.
 */
public record Stroke(LineKind kind, LineWidth width, Layer layer) {
    public static final Stroke OUTLINE = new Stroke(LineKind.CONTINUOUS, LineWidth.NARROW, Layer.OUTLINE);
    public static final Stroke HOLE = new Stroke(LineKind.CONTINUOUS, LineWidth.NARROW, Layer.HOLES);
    public static final Stroke HIDDEN = new Stroke(LineKind.DASHED, LineWidth.FINE, Layer.DIMENSION);
    public static final Stroke BEND = new Stroke(LineKind.DOUBLE_CHAIN, LineWidth.FINE, Layer.BEND);
    public static final Stroke CENTRE = new Stroke(LineKind.CHAIN, LineWidth.FINE, Layer.CENTRE);
    public static final Stroke DIMENSION = new Stroke(LineKind.CONTINUOUS, LineWidth.FINE, Layer.DIMENSION);
    public static final Stroke TABLE = new Stroke(LineKind.CONTINUOUS, LineWidth.FINE, Layer.TEXT);
    public static final Stroke CHECK = new Stroke(LineKind.CONTINUOUS, LineWidth.FINE, Layer.CHECK);
    public static final Stroke FRAME = new Stroke(LineKind.CONTINUOUS, LineWidth.FINE, Layer.FRAME);

    /** The same, in another width. */
    public Stroke with(LineWidth other) {
        return new Stroke(kind, other, layer);
    }

    /** The same, broken in another way. */
    public Stroke with(LineKind other) {
        return new Stroke(other, width, layer);
    }

    /** Dashes and gaps in turn, mm; empty for a continuous line. */
    public List<Double> dashes() {
        return kind.pattern().stream().map(part -> part * width.mm()).toList();
    }
}
