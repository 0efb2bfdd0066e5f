package org.brakewright.buildfile;

/**
 * A stretch of the text.
 *
 * @param start offset of its first character
 * @param end offset behind its last character
 * @param line line of its first character, the first is 1
 * @param column character within that line, the first is 1
 */
record Span(int start, int end, int line, int column) {
    /** The very beginning of the file. */
    static final Span TOP = new Span(0, 0, 1, 1);
}
