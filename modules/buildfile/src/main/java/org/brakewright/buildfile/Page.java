package org.brakewright.buildfile;

/**
 * A text as lines.
 *
 * @param text the text, without byte order mark
 */
record Page(String text) {
    /** How this text ends its lines. */
    String lineBreak() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** Offset of the first character of the line. */
    int lineStart(int offset) {
        return text.lastIndexOf('\n', offset - 1) + 1;
    }

    /** Offset behind the last character of the line, before its line break. */
    int lineEnd(int offset) {
        int end = text.indexOf('\n', offset);
        if (end < 0) {
            return text.length();
        }
        return end > offset && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    /** Offset of the first character of the next line, or the end of the text. */
    int nextLine(int offset) {
        int end = text.indexOf('\n', offset);
        return end < 0 ? text.length() : end + 1;
    }

    /** Whether only blanks stand between the beginning of the line and an offset. */
    boolean beginsLine(int offset) {
        return text.substring(lineStart(offset), offset).isBlank();
    }

    /** Whether a stretch is more than blanks and a comma on one line, such as a comment. */
    boolean remarkable(int from, int to) {
        return !text.substring(from, to).matches("[ ,]*");
    }

    String replace(Change change) {
        return text.substring(0, change.start()) + change.by() + text.substring(change.end());
    }

    /** Characters from start to end give way to others. */
    record Change(int start, int end, String by) {}
}
