package org.brakewright.drawing.lettering;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines. */
public final class Wrap {
    /** From one baseline to the next, in heights of a capital letter. */
    public static final double LINE_FEED = 1.7;

    private static final double STEP_DOWN = 0.95;

    /** Lines of words and the height of their capital letters, mm. */
    public record Block(List<String> lines, double height) {}

    private Wrap() {}

    /** Lines no longer than {@code width} where the words allow it; a single word longer than that stands alone. */
    public static List<String> lines(String words, double height, double width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : words.strip().split("\\s+", -1)) {
            boolean full = !line.isEmpty() && Lettering.width(line + " " + word, height) > width;
            if (full) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return List.copyOf(lines);
    }

    /** The words as high as they go, at most {@code highest}, into a room of {@code width} by {@code depth}, mm. */
    public static Block fitted(String words, double highest, double width, double depth) {
        double height = highest;
        List<String> lines = lines(words, height, width);
        while (!fits(lines, height, width, depth)) {
            height *= STEP_DOWN;
            lines = lines(words, height, width);
        }
        return new Block(lines, height);
    }

    private static boolean fits(List<String> lines, double height, double width, double depth) {
        return lines.size() * LINE_FEED * height <= depth
                && lines.stream().allMatch(line -> Lettering.width(line, height) <= width);
    }
}
