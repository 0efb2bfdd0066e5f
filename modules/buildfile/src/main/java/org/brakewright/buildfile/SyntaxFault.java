package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.brakewright.model.Problem;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Puts into plain words why a text is no YAML. The parser stops at the first such fault, so there is one, or tabs. */
final class SyntaxFault {
    private static final String FORM = "lines of the form key: value, each section indented by two spaces";

    /** Plain words by a piece of the parser's message; the first that fits is taken. */
    private static final Map<String, String> WORDS = words();

    private SyntaxFault() {}

    static List<LocatedProblem> of(RuntimeException thrown, String text) {
        LocatedProblem first = located(thrown, text);
        List<LocatedProblem> tabs = tabs(text, first.line());
        return tabs.isEmpty() ? List.of(first) : tabs;
    }

    private static LocatedProblem located(RuntimeException thrown, String text) {
        return switch (thrown) {
            case ReaderException control -> control(control, text);
            case MarkedYamlEngineException marked -> at(place(marked), plain(message(marked)), text);
            default -> at(Optional.empty(), "this is not YAML that can be read", text);
        };
    }

    /** What was never ended is told where it begins, as the place where the parser gave up says nothing. */
    private static Optional<Mark> place(MarkedYamlEngineException marked) {
        boolean begun = message(marked).contains("unexpected end of stream")
                || message(marked).contains("could not find expected ':'")
                || Optional.ofNullable(marked.getContext()).orElse("").startsWith("while parsing a flow");
        Optional<Mark> opened = marked.getContextMark();
        return begun && opened.isPresent() ? opened : marked.getProblemMark().or(marked::getContextMark);
    }

    private static String message(MarkedYamlEngineException marked) {
        return Optional.ofNullable(marked.getProblem()).orElse("");
    }

    private static LocatedProblem at(Optional<Mark> mark, String message, String text) {
        int line = mark.map(Mark::getLine).orElse(0) + 1;
        int column = mark.map(Mark::getColumn).orElse(0) + 1;
        String written = text.lines().skip(line - 1L).findFirst().orElse("").strip();
        return new LocatedProblem(line, column, new Problem("", Faults.shown(written), message, FORM));
    }

    private static LocatedProblem control(ReaderException fault, String text) {
        int index = Math.min(text.length(), text.offsetByCodePoints(0, clamp(fault.getPosition(), text)));
        String before = text.substring(0, index);
        int line = Math.toIntExact(before.chars().filter(sign -> sign == '\n').count()) + 1;
        int column = index - before.lastIndexOf('\n');
        String code = String.format(Locale.ROOT, "U+%04X", fault.getCodePoint());
        return new LocatedProblem(
                line,
                column,
                new Problem("", code, "a sign that cannot be shown stands here (" + code + ")", "plain text"));
    }

    private static int clamp(int position, String text) {
        return Math.clamp(position, 0, text.codePointCount(0, text.length()));
    }

    private static List<LocatedProblem> tabs(String text, int lastLine) {
        List<LocatedProblem> found = new ArrayList<>();
        List<String> lines = text.lines().limit(lastLine).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            int tab = line.indexOf('\t');
            if (tab >= 0 && !line.isBlank() && line.substring(0, tab).isBlank()) {
                String message = "a tab indents this line";
                found.add(new LocatedProblem(
                        i + 1, tab + 1, new Problem("", Faults.shown(line.strip()), message, "spaces")));
            }
        }
        return found;
    }

    private static String plain(String problem) {
        return WORDS.entrySet().stream()
                .filter(entry -> problem.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("this cannot be read as YAML (" + Faults.shown(problem) + ")");
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(
                "mapping values are not allowed",
                "a colon stands where no key can begin: is the line indented too far, or does the text before it need quotes?");
        words.put("could not find expected ':'", "this line has no colon behind its key");
        words.put("unexpected end of stream", "a quotation mark is opened here and never closed");
        words.put("found unexpected document separator", "a quotation mark is opened and never closed before ---");
        words.put("expected ',' or ']'", "a list is opened here with [ and not closed, or a comma is missing in it");
        words.put("expected ',' or '}'", "braces are opened here with { and not closed, or a comma is missing in them");
        words.put(
                "node content, but found '<stream end>'",
                "the file ends where a value is due; is a [ or a { not closed?");
        words.put("expected the node content", "a value is due here, and this sign cannot begin one");
        words.put(
                "expected '<document start>'",
                "this line stands further left than the first key of the file, or behind the file's end");
        words.put("sequence entries are not allowed", "a list entry with - cannot begin here");
        words.put("cannot start any token", "a text cannot begin with this sign; put the text in quotes");
        words.put(
                "unknown escape character",
                "a backslash stands before a sign it cannot stand before; use 'single quotes'");
        words.put("expected chomping", "behind | or > only - or + can stand; the text begins in the next line");
        words.put("unexpected character found", "a name is missing behind & or *");
        words.put(
                "but found '<scalar>'",
                "a text stands where none can: is something left behind closing quotes, or is a colon missing?");
        words.put("expected <block end>", "this line is indented differently from the lines it belongs to");
        words.put("found undefined tag handle", "a tag with ! is not used here");
        return words;
    }
}
