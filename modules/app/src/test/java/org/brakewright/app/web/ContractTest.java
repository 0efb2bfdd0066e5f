package org.brakewright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.analysis.tolerance.Plan;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.analysis.tolerance.Tolerances;
import org.brakewright.app.Cars;
import org.brakewright.app.page.PageMaker;
import org.brakewright.app.page.SheetsMaker;
import org.brakewright.app.page.SpreadMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.scene.SceneMaker;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.buildfile.LocatedProblem;
import org.brakewright.model.Build;
import org.brakewright.model.Problem;
import org.brakewright.sheets.Issue;
import org.brakewright.sheets.Sheet;
import org.brakewright.sheets.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Both sides of the wire say the same: every key, every kind of value, in both directions. */
class ContractTest {
    private static final Contract CONTRACT = new Contract();
    private static final PageMaker.Frame FRAME = new PageMaker.Frame(3, "car.yaml", true, true, false);

    @Test
    void theContractIsUnderstood() {
        assertThat(CONTRACT.names())
                .contains("Page", "Finding", "Cure", "Point", "ForceChart", "FieldView", "WorkingStep", "Refusal");
        assertThat(CONTRACT.keysOf("Page")).hasSizeGreaterThan(15).contains("load_cases", "cautions");
        assertThat(CONTRACT.differences("Card", JsonMapper.shared().readTree("{\"key\":\"efort\",\"more\":1}")))
                .contains("Card.label is missing", "Card.more is not in the contract")
                .anyMatch(line -> line.startsWith("Card.key is \"efort\""));
    }

    @ParameterizedTest
    @MethodSource("cars")
    void thePageIsWhatTheContractSays(String text) {
        for (UnitSystem system : UnitSystem.values()) {
            JsonNode page = json(new PageMaker(new Show(system)).make(Cars.assessed(text), FRAME));
            assertThat(CONTRACT.differences("Page", page)).isEmpty();
            assertThat(page.toString()).doesNotContain("NaN", "Infinity");
        }
    }

    static Stream<String> cars() {
        return Stream.of(
                Cars.text("hill-climber"),
                Cars.text("shop-pickup"),
                Cars.text("heavy-tourer"),
                Cars.text("hill-climber", "grip: 1.0 ± 0.1 (assumed)", "grip: 0.05"),
                Cars.text("hill-climber", "cg_height: 405 ± 30 mm (assumed)", "cg_height: 1300 mm"),
                Cars.text("hill-climber", "bore: 0.70 in (part sheet)", "bore: 2 in")
                        .replace("0.40 ± 0.04 (part sheet)", "0.1")
                        .replace("pad_arm: 268 mm", "pad_arm: 60 mm"));
    }

    @ParameterizedTest
    @MethodSource("cars")
    void theSpreadIsWhatTheContractSays(String text) {
        Build build = Cars.assessed(text).build();
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(Tolerances.run(build, new Plan(128, 1, 2), () -> false))
                    .isInstanceOfSatisfying(ToleranceOutcome.Done.class, done -> {
                        JsonNode spread = json(new SpreadMaker(new Show(system)).make(done.tolerance(), 3));
                        assertThat(CONTRACT.differences("Spread", spread)).isEmpty();
                        assertThat(spread.toString()).doesNotContain("NaN", "Infinity");
                    });
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void theStopsAreWhatTheContractSays(String text) {
        for (UnitSystem system : UnitSystem.values()) {
            JsonNode stops = json(new PageMaker(new Show(system)).stops(Cars.assessed(text), 3));
            assertThat(CONTRACT.differences("FollowedStops", stops)).isEmpty();
            assertThat(stops.toString()).doesNotContain("NaN", "Infinity");
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void theSheetsAreWhatTheContractSays(String text) {
        for (UnitSystem system : UnitSystem.values()) {
            Show show = new Show(system);
            List<Sheet> sheets =
                    Sheets.of(Cars.assessed(text), new Issue("", "", "2026-11-26"), new FindingWords(show));
            assertThat(CONTRACT.differences("SheetList", json(new SheetsMaker(show).make(sheets, 3))))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void theSceneIsWhatTheContractSays(String text) {
        for (UnitSystem system : UnitSystem.values()) {
            JsonNode scene = json(new SceneMaker(new Show(system)).make(Cars.assessed(text), 3));
            assertThat(CONTRACT.differences("Scene", scene)).isEmpty();
            assertThat(scene.toString()).doesNotContain("NaN", "Infinity");
        }
    }

    @Test
    void aRefusalIsWhatTheContractSays() {
        LocatedProblem problem = new LocatedProblem(3, 4, new Problem("pedal.ratio", "six", "no number", "1 to 15"));
        JsonNode refusal = json(PageHandlers.Refusal.of(List.of(problem)));
        assertThat(CONTRACT.differences("Refusal", refusal)).isEmpty();
    }

    @Test
    void requestsAreWhatTheContractSays() {
        List<String> taken = Arrays.stream(PageHandlers.EditRequest.class.getRecordComponents())
                .map(component -> component.getName())
                .toList();
        assertThat(CONTRACT.keysOf("EditRequest")).containsExactlyInAnyOrderElementsOf(taken);
        assertThat(taken).containsAll(CONTRACT.keysOf("StepRequest"));
    }

    private static JsonNode json(Object value) {
        return JsonMapper.shared().readTree(Json.write(value));
    }
}
