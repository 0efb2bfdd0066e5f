package org.brakewright.buildfile;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** One piece of the file as the parser saw it, with its place; the outline of the file before anything is understood. */
sealed interface Node {
    /** Where it stands. */
    Span span();

    /**
     * A single value.
     *
     * @param value its text without quotes
     * @param style how it is written
     */
    record Text(Span span, String value, Style style) implements Node {
        private static final Set<String> NOTHING = Set.of("", "~", "null");

        /** Whether nothing is written, which counts as a key that is not there. */
        boolean absent() {
            return style == Style.PLAIN && NOTHING.contains(value.toLowerCase(Locale.ROOT));
        }
    }

    /** A list; {@code flow} when written in brackets. */
    record Items(Span span, boolean flow, List<Node> items) implements Node {}

    /** Keys with values; {@code flow} when written in braces. */
    record Section(Span span, boolean flow, List<Entry> entries) implements Node {}

    /** Something refused already, of which no more is to be said. */
    record Unread(Span span) implements Node {}

    /** A key and what stands behind it. */
    record Entry(Text key, Node value) {}

    /** How a text is written. */
    enum Style {
        PLAIN,
        SINGLE_QUOTED,
        DOUBLE_QUOTED,
        /** A block after {@code |} or {@code >}. */
        BLOCK
    }
}
