package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fault of a file is told at its place; the places are counted by hand in the texts. */
class FaultsTest {

    /** One change to a good file and what it must bring up. */
    record Fault(String from, String to, String place, String path, List<String> said) {
        @Override
        public String toString() {
            return from + " -> " + to;
        }
    }

    private static Fault fault(String from, String to, String place, String path, String... said) {
        return new Fault(from, to, place, path, List.of(said));
    }

    static Stream<Fault> faults() {
        return Stream.of(
                fault(
                        "  wheelbase:",
                        "  wheel_base:",
                        "4:3",
                        "car.wheel_base",
                        "unknown key",
                        "did you mean `wheelbase`"),
                fault("  wheelbase:", "  Wheelbase:", "4:3", "car.Wheelbase", "did you mean `wheelbase`"),
                fault("  grip: 1.0", "  bore: 1 in", "7:3", "car.bore", "unknown key `bore`", "`apply.front_master`"),
                fault("  grip: 1.0", "  grip: 1.0\n  grip: 0.9", "8:3", "car.grip", "written twice", "line 7"),
                fault("2310 ± 5 mm", "2310 ± 5", "4:14", "car.wheelbase", "2310 ± 5", "mm"),
                fault("2310 ± 5 mm (measured)", "23.1 m", "4:14", "car.wheelbase", "1 m to 6 m", "because no car"),
                fault("2310 ± 5 mm (measured)", "90 in (guess)", "4:14", "car.wheelbase", "`guess`", "part sheet"),
                fault("2310 ± 5 mm (measured)", "2.3 kg", "4:14", "car.wheelbase", "kg", "length"),
                fault("2310 ± 5 mm (measured)", "[1 m]", "4:3", "car.wheelbase", "takes a length", "not a list"),
                fault("2310 ± 5 mm (measured)", "", "4:13", "car.wheelbase", "missing in `car`", "wheel centres"),
                fault("  grip: 1.0\n", "  grip: 1.0\n    deep: 2\n", "8:9", "", "colon", "indented"),
                fault(
                        "caliper: sliding",
                        "caliper: slidng",
                        "15:12",
                        "front.caliper",
                        "did you mean `sliding`",
                        "fixed"),
                fault(
                        "caliper: sliding",
                        "caliper: none",
                        "15:12",
                        "front.caliper",
                        "`none` is not a choice for",
                        "fixed"),
                fault("kind: disc", "kind: disk", "14:9", "front.kind", "did you mean `disc`", "kind: drum"),
                fault("  kind: disc\n", "", "13:1", "front.kind", "`kind` is missing in `front`", "disc"),
                fault("pistons: [48 mm (part sheet)]", "pistons: []", "16:3", "front.pistons", "no entry", "ONE side"),
                fault("pistons: [48 mm (part sheet)]", "pistons: [48 mm, ]", "", "", ""),
                fault("pistons: [48 mm (part sheet)]", "pistons: [48 mm, 5 m]", "16:20", "front.pistons[1]", "0.12 m"),
                fault(
                        "pistons: [48 mm (part sheet)]",
                        "pistons: {a: 1}",
                        "16:3",
                        "front.pistons",
                        "not a section",
                        "list"),
                fault(
                        "shoes: leading_trailing,",
                        "",
                        "19:1",
                        "rear.shoes",
                        "`shoes` is missing in `rear`",
                        "lower shoe ends"),
                fault("drum_radius: 101 mm", "drum_radius: 1.01 m", "19:77", "rear.drum_radius", "0.06 m to 0.3 m"),
                fault("pedal: {ratio: 5.0}", "pedal: 5.0", "20:8", "pedal", "not a text", "ratio"),
                fault("pedal: {ratio: 5.0}\n", "", "1:1", "pedal", "`pedal` is missing", "Measure the pedal"),
                fault("ratio: 5.0", "ratio: 1,500", "20:18", "pedal.500", "unknown key `500`", "comma"),
                fault("use: road", "use: street", "26:15", "intent.use", "street", "road, road_and_track, track"),
                fault("[un_r13h]", "un_r13h", "26:32", "intent.rule_sets", "takes a list"),
                fault("[un_r13h]", "[un_r13]", "26:33", "intent.rule_sets[0]", "did you mean `un_r13h`"),
                fault(", rule_sets: [un_r13h]", "", "26:1", "intent.rule_sets", "missing", "write [] for none"),
                fault("format: 1", "format: 2", "1:9", "format", "format 2 is not known", "format 1 only"),
                fault("format: 1", "format: one", "1:9", "format", "format one is not known"),
                fault("format: 1\n", "", "1:1", "format", "`format` is missing", "Write format: 1"),
                fault("name: Larkspur special", "name: [a, b]", "2:1", "name", "takes a text"),
                fault("name: Larkspur special", "name: ' '", "2:7", "name", "has no text"),
                fault(
                        "name: Larkspur special",
                        "name: " + "x".repeat(201),
                        "2:7",
                        "name",
                        "201 characters",
                        "at most 200"),
                fault(
                        "name: Larkspur",
                        "story: " + "x".repeat(20_001) + "\nname: L",
                        "2:8",
                        "story",
                        "20001 characters"),
                fault("name: Larkspur", "name: !!str Larkspur", "2:7", "", "tag", "without !"),
                fault("name: Larkspur", "name: &here Larkspur", "2:7", "", "`&here`"),
                fault("name: Larkspur special", "name: *here", "2:7", "", "`*here`", "again"),
                fault("pedal: {ratio: 5.0}", "pedal: {<<: {}, ratio: 5.0}", "20:9", "pedal.<<", "takes keys"),
                fault("pedal: {ratio: 5.0}", "pedal: {ratio: 5.0", "20:8", "", "{ and not closed"),
                fault("name: Larkspur special", "name: 'Larkspur special", "2:7", "", "quotation mark"),
                fault("name: Larkspur special", "name: @Larkspur", "2:7", "", "cannot begin with this sign"),
                fault("name: Larkspur special", "name Larkspur", "2:1", "", "no colon behind its key"),
                fault("  wheelbase", "\twheelbase", "4:1", "", "a tab indents this line"),
                fault("intent:", "---\nintent:", "26:1", "", "more than one document"),
                fault(
                        "    - name: driver only",
                        "    - name:",
                        "9:12",
                        "car.load_cases[0].name",
                        "missing",
                        "half a tank"),
                fault(
                        "      front_axle: 318 kg (measured)\n",
                        "",
                        "9:7",
                        "car.load_cases[0].front_axle",
                        "weighbridge"),
                fault(
                        "balance_bar: {",
                        "balance_bar: {locked_for_road: maybe, ",
                        "25:34",
                        "apply.balance_bar.locked_for_road",
                        "yes or no"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void eachFaultIsToldAtItsPlace(Fault fault) {
        String good = Texts.larkspur();
        assertThat(good).contains(fault.from());
        List<LocatedProblem> problems = Texts.problems(good.replace(fault.from(), fault.to()));
        if (fault.place().isEmpty()) {
            assertThat(problems).isEmpty();
            return;
        }
        assertThat(problems).isNotEmpty();
        LocatedProblem first = problems.getFirst();
        assertThat(first.line() + ":" + first.column()).as(first.toString()).isEqualTo(fault.place());
        assertThat(first.problem().path()).isEqualTo(fault.path());
        assertThat(first.problem().message() + " " + first.problem().allowed()).contains(fault.said());
    }

    /** One fault must not hide another, nor bring up faults that are none. */
    @Test
    void allFaultsAreToldAtOnceAndInOrder() {
        String text = Texts.larkspur()
                .replace("wheelbase", "wheel_base")
                .replace("2310 ± 5 mm", "2310 ± 5")
                .replace("grip: 1.0", "grip: fast")
                .replace("kind: disc", "kind: disk")
                .replace("caliper: sliding", "caliper: slidng")
                .replace("offset: 0 mm", "ofset: 1 m");
        assertThat(Texts.problems(text).stream()
                        .map(one -> one.line() + " " + one.problem().path()))
                .containsExactly(
                        "4 car.wheel_base",
                        "4 car.wheelbase",
                        "7 car.grip",
                        "14 front.kind",
                        "15 front.caliper",
                        "25 apply.balance_bar.ofset",
                        "25 apply.balance_bar.offset");
    }

    @Test
    void loadCasesHaveDifferentNames() {
        String text = Texts.larkspur()
                .replace("front:\n", "    - {name: driver only, front_axle: 1 kN, rear_axle: 400 kg}\nfront:\n");
        assertThat(Texts.problems(text)).hasSize(2).first().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(13);
            assertThat(problem.column()).isEqualTo(14);
            assertThat(problem.problem().path()).isEqualTo("car.load_cases[1].name");
            assertThat(problem.problem().message()).contains("`driver only` is the name of an entry above");
        });
    }

    @Test
    void limitsAreShownInTheUnitThatWasTyped() {
        // 1 m is 39.3701 in, rounded up so that it is allowed; 6 m is 236.22 in (one inch is 25.4 mm exactly)
        String text = Texts.larkspur().replace("2310 ± 5 mm (measured)", "9 in");
        assertThat(Texts.problems(text).getFirst().problem().allowed()).isEqualTo("39.38 in to 236.2 in");
    }

    @Test
    void aToleranceMayReachBeyondTheLimits() {
        String text = Texts.larkspur().replace("offset: 0 mm", "offset: 99 ± 5 mm");
        assertThat(Texts.problems(text)).isEmpty();
    }

    @Test
    void alienKeysOfAnotherKindAreNamed() {
        String text = Texts.larkspur().replace("effective_radius: 92 mm", "drum_radius: 92 mm");
        assertThat(Texts.problems(text))
                .singleElement()
                .satisfies(
                        problem -> assertThat(problem.problem().message())
                                .isEqualTo(
                                        "unknown key `drum_radius`; it belongs in `front` with kind: drum or `rear` with kind: drum or `parking.acts_on` with kind: drum_in_disc"));
    }
}
