package org.brakewright.drawing;

import org.brakewright.drawing.lettering.Lettering;

/**
 * One line of words.
 *
 * @param anchor on the baseline
 * @param height of a capital letter, mm
 * @param rotation of the baseline, degrees counterclockwise
 */
public record Text(Point anchor, double height, String words, Align align, double rotation, Layer layer)
        implements Mark {
    public Text {
        Demand.positive("height", height);
        Demand.finite("rotation", rotation);
    }

    /** Level words that start at the anchor. */
    public static Text of(Point anchor, double height, String words) {
        return new Text(anchor, height, words, Align.LEFT, 0, Layer.TEXT);
    }

    /** The same, aligned otherwise. */
    public Text aligned(Align other) {
        return new Text(anchor, height, words, other, rotation, layer);
    }

    /** The same with its baseline at an angle, degrees. */
    public Text turned(double degrees) {
        return new Text(anchor, height, words, align, degrees, layer);
    }

    /** The same on another layer. */
    public Text on(Layer other) {
        return new Text(anchor, height, words, align, rotation, other);
    }

    /** The same, low enough to be no longer than {@code room} mm. */
    public Text within(double room) {
        double width = width();
        return width <= room ? this : new Text(anchor, height * room / width, words, align, rotation, layer);
    }

    /** Length of the words, mm. */
    public double width() {
        return Lettering.width(words, height);
    }

    /** Where the baseline begins. */
    public Point start() {
        return anchor.polar(-align.share() * width(), rotation);
    }
}
