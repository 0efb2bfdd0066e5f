package org.brakewright.app.report;

/** Breaks sentences into lines. */
final class Wrap {
    private Wrap() {}

    /** Lines of at most a width, each behind an indent, without a last line end. */
    static String lines(String sentence, int width, String indent) {
        StringBuilder text = new StringBuilder(indent);
        int column = indent.length();
        for (String word : sentence.split(" ", -1)) {
            if (column > indent.length() && column + 1 + word.length() > width) {
                text.append('\n').append(indent);
                column = indent.length();
            } else if (column > indent.length()) {
                text.append(' ');
                column++;
            }
            text.append(word);
            column += word.length();
        }
        return text.toString();
    }
}
