package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the text, the reader answers with problems that have a place, and never throws. */
class HostileTextTest {

    @Test
    void refusesAFileThatIsTooLarge() {
        String text = Texts.larkspur() + "# " + "x".repeat(BuildFile.LARGEST_BYTES);
        assertThat(said(BuildFile.read(text))).containsExactly("1:1 the file is larger than 1 MiB");
        assertThat(said(BuildFile.readUtf8(text.getBytes(StandardCharsets.UTF_8), Beside.NOTHING)))
                .containsExactly("1:1 the file is larger than 1 MiB");
        // two bytes a letter: half as many letters, but more bytes than allowed
        assertThat(said(BuildFile.read("# " + "ä".repeat(BuildFile.LARGEST_BYTES / 2))))
                .containsExactly("1:1 the file is larger than 1 MiB");
    }

    @Test
    void refusesBytesThatAreNotUtf8() {
        assertThat(said(BuildFile.readUtf8("name: Müller".getBytes(StandardCharsets.ISO_8859_1), Beside.NOTHING)))
                .containsExactly("1:1 the file is not UTF-8 text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a note\n", "---\n", "~", "\uFEFF"})
    void refusesAnEmptyFile(String text) {
        assertThat(said(BuildFile.read(text))).containsExactly("1:1 the file is empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? ", "[a,"})
    void refusesBottomlessNesting(String opening) {
        String text = opening.repeat(BuildFile.LARGEST_BYTES / opening.length());
        assertThat(said(BuildFile.read(text))).singleElement().asString().endsWith("the file is nested too deeply");
    }

    @Test
    void twentyLevelsAreTheDeepest() {
        // the file itself is the first level and the value in the innermost brackets the last
        String good = "story: " + "[".repeat(18) + "x" + "]".repeat(18);
        String bad = "story: " + "[".repeat(19) + "x" + "]".repeat(19);
        assertThat(said(BuildFile.read(good))).noneMatch(line -> line.contains("too deeply"));
        assertThat(said(BuildFile.read(bad))).containsExactly("1:27 the file is nested too deeply");
    }

    @Test
    void refusesAFileThatHoldsTooMuch() {
        assertThat(said(BuildFile.read("x: 1\n".repeat(20_001))))
                .singleElement()
                .asString()
                .endsWith("holds too much");
    }

    /** The known attack of this form: ten lists that each repeat the one before ten times. */
    @Test
    void followsNoAlias() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            text.append("a").append(i).append(": &a").append(i).append(" [");
            text.append(("*a" + (i - 1) + ", ").repeat(10)).append("]\n");
        }
        assertThat(said(BuildFile.read(text.toString())))
                .contains("1:5 `&a0` marks a place for repeating", "2:10 `*a0` repeats another place of the file");
    }

    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    /** Good files with letters dropped, doubled, swapped or replaced. */
    @ParameterizedTest
    @MethodSource("seeds")
    void neverThrows(long seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(
                Texts.text(List.of("larkspur.yaml", "twin.yaml", "tandem.yaml").get(random.nextInt(3))));
        String signs = "[]{}:,#&*!|>'\"%@`-?\t\n\r \\()0159.±\u0000\u0085\u2028\uD800\uFEFFé";
        for (int i = random.nextInt(6); i >= 0; i--) {
            int at = random.nextInt(text.length());
            char sign = signs.charAt(random.nextInt(signs.length()));
            switch (random.nextInt(3)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.setCharAt(at, sign);
                default -> text.insert(at, sign);
            }
        }
        List<LocatedProblem> problems = Texts.problems(text.toString());
        assertThat(problems).isSortedAccordingTo(LocatedProblem.BY_PLACE);
        assertThat(problems).allSatisfy(problem -> {
            assertThat(problem.problem().message()).isNotBlank().doesNotContain("Exception");
            assertThat(problem.problem().allowed()).isNotBlank();
        });
        assertThat(SpanEdit.apply(text.toString(), "car.load_cases[0].name", "x: y"))
                .isNotNull();
    }

    private static List<String> said(ReadOutcome outcome) {
        return switch (outcome) {
            case ReadOutcome.Usable _ -> List.of();
            case ReadOutcome.Unusable unusable ->
                unusable.problems().stream()
                        .map(problem -> problem.line() + ":" + problem.column() + " "
                                + problem.problem().message())
                        .toList();
        };
    }
}
