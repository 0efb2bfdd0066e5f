package org.brakewright.buildfile;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
    record Section(Span span, boolean flow, List<Entry> entries) implements Node {
        /** The value of a key, of the first when it is written twice; null when it is not there. */
        @Nullable
        Node find(String key) {
            for (Entry entry : entries) {
                if (entry.key().value().equals(key)) {
                    return entry.value();
                }
            }
            return null;
        }
    }

    /** Something refused already, of which no more is to be said. */
    record Unread(Span span) implements Node {}

    /** A key and what stands behind it. */
    record Entry(Text key, Node value) {}

    /** Where the last letter of its content ends; the parser ends a block only where the next thing begins. */
    default int contentEnd(String text) {
        return switch (this) {
            case Text scalar when scalar.style() == Style.BLOCK -> lastLetter(text);
            case Items items
            when !items.flow() && !items.items().isEmpty() ->
                items.items().getLast().contentEnd(text);
            case Section section
            when !section.flow() && !section.entries().isEmpty() ->
                section.entries().getLast().value().contentEnd(text);
            case Text _, Items _, Section _, Unread _ -> span().end();
        };
    }

    private int lastLetter(String text) {
        int end = span().end();
        while (end > span().start() && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    /** How a text is written. */
    enum Style {
        PLAIN,
        SINGLE_QUOTED,
        DOUBLE_QUOTED,
        /** A block after {@code |} or {@code >}. */
        BLOCK
    }
}
