package org.brakewright.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RulesTest {
    private static final String[] EVERY_SET = {"un_r13h", "fmvss_135", "state_assessment", "student_competition"};

    static Stream<TestCar> cars() {
        return Stream.of(
                        TestCar.twin(),
                        TestCar.tandem(),
                        TestCar.boosted(),
                        TestCar.hopeless(),
                        TestCar.twin().withClutch(),
                        TestCar.twin().with("car.grip", "0.5"),
                        TestCar.twin().with("pedal.ratio", "3"),
                        TestCar.twin().with("rear.pad_friction", "0.85"),
                        TestCar.tandem().withRearDrums("3/4 in").withValve("25 bar", "0.3", true),
                        TestCar.twin().alsoLoaded("laden", 500, 700, 520))
                .map(car -> car.answeringTo(EVERY_SET));
    }

    /** A figure tagged from memory never alone decides a pass (standards, head of the page). */
    @ParameterizedTest
    @MethodSource("cars")
    void nothingRememberedIsEverFine(TestCar car) {
        List<Finding> remembered = Judgement.all(car, Map.of()).stream()
                .filter(each -> each.limit() != null && each.limit().tag() == Tag.FROM_MEMORY)
                .toList();
        assertThat(remembered).isNotEmpty();
        assertThat(remembered).extracting(Finding::state).doesNotContain(State.FINE);
    }

    @ParameterizedTest
    @MethodSource("cars")
    void noJudgementIsMadeTwice(TestCar car) {
        List<Finding> findings = Judgement.all(car, Map.of());
        assertThat(findings.stream().map(each -> each.key() + "/" + each.subject()))
                .isNotEmpty()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("cars")
    void everyFigureIsANumber(TestCar car) {
        List<Double> values = Judgement.all(car, Map.of()).stream()
                .flatMap(each -> Stream.concat(
                        each.figures().values().stream(),
                        each.found() == null ? Stream.empty() : Stream.of(each.found())))
                .map(Figure::value)
                .toList();
        assertThat(values).isNotEmpty().allMatch(Double::isFinite);
    }

    @Test
    void everyRuleHasItsOwnKey() {
        assertThat(Rules.all()).extracting(Rule::key).hasSize(63).doesNotHaveDuplicates();
    }
}
