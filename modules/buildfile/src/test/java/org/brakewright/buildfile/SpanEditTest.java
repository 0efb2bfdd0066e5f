package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An edit changes its own characters and no others; the expected texts are written out by hand. */
class SpanEditTest {

    @ParameterizedTest
    @MethodSource("edits")
    void changesOnlyItsOwnCharacters(String before, String path, String value, String after) {
        assertThat(edited(before, path, value)).isEqualTo(after);
    }

    static List<Arguments> edits() {
        return List.of(
                Arguments.of("a: 1 mm  # note\n", "a", "2 mm", "a: 2 mm  # note\n"),
                Arguments.of("a: '1 mm' # note\n", "a", "2 mm", "a: '2 mm' # note\n"),
                Arguments.of("a: \"1\"\n", "a", "say \"x\"", "a: \"say \\\"x\\\"\"\n"),
                Arguments.of("a: 1\n", "a", "b: c # d", "a: 'b: c # d'\n"),
                Arguments.of("a: 1\n", "a", "7/8\"", "a: 7/8\"\n"),
                Arguments.of("a: {b: 1}\n", "a.b", "x, y", "a: {b: 'x, y'}\n"),
                Arguments.of("a: 1\n", "a", "it's: so", "a: 'it''s: so'\n"),
                Arguments.of("a: 1\n", "a", "null", "a: 'null'\n"),
                Arguments.of("a: 1\n", "a", " x ", "a: ' x '\n"),
                Arguments.of("a:\nb: 1\n", "a", "2", "a: 2\nb: 1\n"),
                Arguments.of("a:   # none yet\nb: 1\n", "a", "2", "a: 2   # none yet\nb: 1\n"),
                Arguments.of("a: ~\n", "a", "2", "a: 2\n"),
                Arguments.of("a: one\n  two\nb: 1\n", "a", "2", "a: 2\nb: 1\n"),
                Arguments.of("a: 1\nb: 2\n", "a", "x\ny", "a: |-\n  x\n  y\nb: 2\n"),
                Arguments.of("a: |\n  x\n  y\n\n# b\nb: 2\n", "a", "z", "a: z\n\n# b\nb: 2\n"),
                Arguments.of("a: [1, 2, 3]\n", "a[1]", "9", "a: [1, 9, 3]\n"),
                Arguments.of("a: [1, 2]\n", "a[2]", "3", "a: [1, 2, 3]\n"),
                Arguments.of("a: 1 # one\n", "a[0]", "2", "a: 2 # one\n"),
                Arguments.of("a: 1 # one\n", "a[1]", "2", "a: [1, 2] # one\n"),
                Arguments.of("a:\n  - 1 # x\n\n# b\nb: 2\n", "a[1]", "3", "a:\n  - 1 # x\n  - 3\n\n# b\nb: 2\n"),
                Arguments.of("a:\n- 1\nb: 2\n", "a[1]", "3", "a:\n- 1\n- 3\nb: 2\n"),
                Arguments.of(
                        "a:\n  b: 1 # x\n\n  # end of a\nc: 2\n",
                        "a.d",
                        "3",
                        "a:\n  b: 1 # x\n  d: 3\n\n  # end of a\nc: 2\n"),
                Arguments.of("a: {b: 1}\n", "a.c", "2", "a: {b: 1, c: 2}\n"),
                Arguments.of("a: {b: 1,}\n", "a.c", "2", "a: {b: 1, c: 2,}\n"),
                Arguments.of("a: {}\n", "a.c", "2", "a: {c: 2}\n"),
                Arguments.of("a: {}\n", "a.c.d[0].e", "2", "a: {c: {d: [{e: 2}]}}\n"),
                Arguments.of("a:\nb: 1\n", "a.c", "2", "a:\n  c: 2\nb: 1\n"),
                Arguments.of("a: 1\n# end\n", "b.c.d", "2", "a: 1\nb:\n  c:\n    d: 2\n# end\n"),
                Arguments.of("a: 1", "b", "2", "a: 1\nb: 2"),
                Arguments.of("a: 1\n", "b[0]", "2", "a: 1\nb: [2]\n"),
                Arguments.of("a: 1\n", "b[0].c", "2", "a: 1\nb:\n  - c: 2\n"),
                Arguments.of(
                        "a:\n  - b: 1\n    c: 2\nd: 1\n", "a[1].b", "3", "a:\n  - b: 1\n    c: 2\n  - b: 3\nd: 1\n"),
                Arguments.of("a:\n  - b: 1\nd: 1\n", "a[0].c", "3", "a:\n  - b: 1\n    c: 3\nd: 1\n"),
                Arguments.of("", "a.b", "1", "a:\n  b: 1\n"),
                Arguments.of("# only a note", "a", "1", "# only a note\na: 1\n"),
                Arguments.of("a: 1\r\nb:\r\n  c: 2\r\n", "b.d", "3", "a: 1\r\nb:\r\n  c: 2\r\n  d: 3\r\n"),
                Arguments.of("a: 1\r\nb: 2\r\n", "a", "x\ny", "a: |-\r\n  x\r\n  y\r\nb: 2\r\n"),
                Arguments.of("\uFEFFa: 1\n", "a", "2", "\uFEFFa: 2\n"),
                Arguments.of(
                        "# \uD83D\uDE97\na: \uD83D\uDE97 1\nb: 1\n",
                        "b",
                        "2",
                        "# \uD83D\uDE97\na: \uD83D\uDE97 1\nb: 2\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: [x, y] # note | [y] | a: [y] # note",
                "a: [x] | [] | a: []",
                "a: [] | [x, y] | a: [x, y]",
                "a: [x] # note | [y] # z | a: [y] # note",
                "{a: [x], b: 1} | [x, z] | {a: [x, z], b: 1}"
            })
    void replacesAWholeListOfPlainValues(String before, String value, String after) {
        assertThat(edited(before, "a", value)).isEqualTo(after);
    }

    @Test
    void replacesAListThatHasALineForEachValue() {
        assertThat(edited("a:\n  - x\n  - y\nb: 1\n", "a", "[z]")).isEqualTo("a:\n  [z]\nb: 1\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "[x", "x]", "[[x]]", "[{b: 1}]", "{b: 1}", "- x", "[x]\nc: 1"})
    void refusesWhatIsNoListForAList(String value) {
        assertThat(SpanEdit.apply("a: [x, y]\nb: 1\n", "a", value)).isInstanceOf(EditOutcome.Refused.class);
    }

    @ParameterizedTest
    @MethodSource("removals")
    void takesOutAKeyAndKeepsTheRest(String before, String path, String after) {
        assertThat(edited(before, path, "")).isEqualTo(after);
    }

    static List<Arguments> removals() {
        return List.of(
                Arguments.of("# top\na: 1 # x\n# next\nb: 2\n", "a", "# top\n# next\nb: 2\n"),
                Arguments.of("a: 1\nb: 2", "b", "a: 1"),
                Arguments.of("a: 1\r\nb: 2\r\n", "a", "b: 2\r\n"),
                Arguments.of("a:\n  b: 1\n  c: 2\n\n# d\nd: 3\n", "a", "\n# d\nd: 3\n"),
                Arguments.of("a:\n  b: 1\nc: 1\n", "a.b", "a:\nc: 1\n"),
                Arguments.of("a: {b: 1, c: 2, d: 3}\n", "a.b", "a: {c: 2, d: 3}\n"),
                Arguments.of("a: {b: 1, c: 2, d: 3}\n", "a.c", "a: {b: 1, d: 3}\n"),
                Arguments.of("a: {b: 1, c: 2, d: 3}\n", "a.d", "a: {b: 1, c: 2}\n"),
                Arguments.of("a: {b: 1}\n", "a.b", "a: {}\n"),
                Arguments.of("a: {b: 1, # x\n  c: 2}\n", "a.b", "a: { # x\n  c: 2}\n"),
                Arguments.of("a: {b: 1, # x\n  c: 2}\n", "a.c", "a: {b: 1, # x\n  }\n"),
                Arguments.of("a: [1, 2, 3]\n", "a[0]", "a: [2, 3]\n"),
                Arguments.of("a: [1, 2, 3]\n", "a[2]", "a: [1, 2]\n"),
                Arguments.of("a:\n  - 1 # x\n  - 2\n", "a[0]", "a:\n  - 2\n"),
                Arguments.of("a:\n  - b: 1 # x\n    c: 2\n  - b: 3\n", "a[0].b", "a:\n  -\n    c: 2\n  - b: 3\n"),
                Arguments.of("a:\n  - b: 1 # x\n    c: 2\n  - b: 3\n", "a[0]", "a:\n  - b: 3\n"),
                Arguments.of("a: 1\nb: 2\n", "a[0]", "b: 2\n"),
                Arguments.of("a: 1\n", "b", "a: 1\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a.", ".a", "a..b", "[0]", "a[x]", "a b", "a.b", "a[5]", "a[0].b", "c"})
    void refusesWhatItCannotDo(String path) {
        assertThat(SpanEdit.apply("a: 1\nc: {d: 1}\n", path, "2")).isInstanceOf(EditOutcome.Refused.class);
    }

    @Test
    void refusesATextThatIsNoYaml() {
        assertThat(SpanEdit.apply("a: 1\nb: {c: 1\n", "a", "2"))
                .isInstanceOfSatisfying(
                        EditOutcome.Refused.class,
                        refused -> assertThat(refused.problem().line()).isEqualTo(2));
    }

    @Test
    void readsEditsAndReadsAgain() {
        String text = edited(Texts.larkspur(), "front.pad_friction", "0.41 (measured)");
        assertThat(text).contains("  pad_friction: 0.41 (measured)\n");
        assertThat(edited(text, "front.pad_friction", "0.36 ± 0.04 (assumed)")).isEqualTo(Texts.larkspur());
        assertThat(Texts.build(edited(text, "car.load_cases[0].cg_height", ""))
                        .car()
                        .loadCases())
                .first()
                .extracting("cgHeight")
                .isNull();
    }

    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    /** Values that are hard to write in YAML. */
    private static final List<String> HARD = List.of(
            "480 ± 20 mm (measured)",
            "7/8\"",
            "- x",
            "a: b",
            "x # y",
            "#",
            "'",
            "\"",
            "\\",
            "[",
            "}",
            ", x",
            "&a",
            "*a",
            "!t",
            "%",
            "@",
            "`",
            "?",
            "? x",
            "|",
            ">",
            "---",
            "...",
            "null",
            "~",
            " x",
            "x ",
            "a\nb",
            "a\n\n b\n",
            "\n",
            "\t",
            "a\tb",
            "é\u00a0ü",
            "\uD83D\uDE97",
            "\u0007",
            "x:",
            ":x",
            "yes",
            "1_000",
            "0x1F",
            "<<",
            "=",
            "- ",
            "a,b",
            "[a, b]",
            "{a: b}",
            "\r",
            "a\r\nb");

    @ParameterizedTest
    @MethodSource("seeds")
    void anyEditKeepsEveryOtherLine(long seed) {
        Random random = new Random(seed);
        String text =
                Texts.text(List.of("larkspur.yaml", "twin.yaml", "tandem.yaml").get(random.nextInt(3)));
        String before = random.nextBoolean() ? text : text.replace("\n", "\r\n");
        List<String> leaves = new ArrayList<>(leaves(before).keySet());
        leaves.sort(null);
        String leaf = leaves.get(random.nextInt(leaves.size()));
        String path = random.nextInt(4) > 0 || !leaf.contains(".") || leaf.endsWith("]")
                ? leaf
                : Paths.parent(leaf) + ".new_key";
        String value = HARD.get(random.nextInt(HARD.size()));
        String after = edited(before, path, value);
        assertThat(leaves(after)).containsEntry(path, value);
        // lines that are not those of the key: at most one line gave way, the others are there in their order
        assertThat(changedLines(before, after)).isLessThanOrEqualTo(1);
        assertThat(after.replace("\r\n", "").contains("\n"))
                .isEqualTo(before.replace("\r\n", "").contains("\n"));
    }

    /** Lines of the first text that are left when what both begin and end with is taken away. */
    private static int changedLines(String before, String after) {
        List<String> old = Arrays.asList(before.split("(?<=\n)", -1));
        List<String> now = Arrays.asList(after.split("(?<=\n)", -1));
        int head = 0;
        while (head < Math.min(old.size(), now.size()) && old.get(head).equals(now.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < Math.min(old.size(), now.size()) - head
                && old.get(old.size() - 1 - tail).equals(now.get(now.size() - 1 - tail))) {
            tail++;
        }
        return old.size() - head - tail;
    }

    private static Map<String, String> leaves(String text) {
        return Leaves.of(java.util.Objects.requireNonNull(TreeReader.read(text).root()));
    }

    private static String edited(String text, String path, String value) {
        return switch (SpanEdit.apply(text, path, value)) {
            case EditOutcome.Edited edited -> edited.text();
            case EditOutcome.Refused refused -> throw new AssertionError(refused.problem() + "\n" + text);
        };
    }
}
