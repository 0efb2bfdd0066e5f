package org.brakewright.buildfile;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Turns the parser's places into ours.
 *
 * <p>The parser counts code points and a Java string counts chars; a sign beyond the basic plane is one of the first
 * and two of the second.
 */
final class Offsets {
    private final int[] charOf;
    private final boolean same;

    Offsets(String text) {
        int points = text.codePointCount(0, text.length());
        same = points == text.length();
        charOf = same ? new int[0] : table(text, points);
    }

    /** The span between two marks; a missing mark counts as the beginning of the file. */
    Span span(Optional<Mark> from, Optional<Mark> to) {
        if (from.isEmpty()) {
            return Span.TOP;
        }
        Mark start = from.get();
        int begin = at(start.getIndex());
        int end = to.map(mark -> at(mark.getIndex())).orElse(begin);
        return new Span(begin, Math.max(begin, end), start.getLine() + 1, start.getColumn() + 1);
    }

    private int at(int codePoint) {
        return same ? codePoint : charOf[Math.min(codePoint, charOf.length - 1)];
    }

    private static int[] table(String text, int points) {
        int[] table = new int[points + 1];
        for (int i = 0, at = 0; i < points; i++) {
            at += Character.charCount(text.codePointAt(at));
            table[i + 1] = at;
        }
        return table;
    }
}
