package org.brakewright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.brakewright.app.Cars;
import org.brakewright.app.web.PageServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a builder does on the page, in a real browser, down to the bytes of the build file. */
@SuppressWarnings("NullAway.Init") // JUnit sets them up
class WorkbenchTest {
    /** Headline values that a bore of the brakes moves; the clutch's stands behind them. */
    private static final int OF_THE_BRAKES = 4;

    private static final String BEFORE = Cars.text("hill-climber");
    private static final String REAR_BORE = "apply.rear_master.bore";
    private static final Pattern REFUSED = Pattern.compile("Failed to load resource: .* 422 .*");

    @TempDir
    private static Path folder;

    private static Path file;
    private static PageServer server;
    private static Chromium chromium;

    private Bench bench;

    @BeforeAll
    static void start() throws IOException {
        file = Bench.car(folder);
        server = Bench.serve(file);
        chromium = new Chromium();
    }

    @AfterAll
    static void stop() {
        chromium.close();
        server.close();
    }

    @BeforeEach
    void open() throws IOException {
        Files.writeString(file, BEFORE);
        bench = new Bench(chromium.browser(), server.address(), Bench.Screen.DESKTOP);
    }

    /** Nothing may go wrong unseen, and nothing may leave this machine. */
    @AfterEach
    void nothingWentWrong() {
        assertThat(bench.complaints()).isEmpty();
        assertThat(bench.requests()).isNotEmpty().allMatch(url -> url.startsWith(server.address()));
        bench.close();
    }

    @Test
    void opensWithVerdictHeadlineAndFindings() {
        assertThat(bench.at("h1")).hasText("Kestrel hill-climb car");
        assertThat(bench.at(".verdict-word")).hasText("Stop.");
        assertThat(bench.at("#headline .card h2")).hasText(new String[] {
            "Pedal effort", "Pedal travel", "Front share", "Rear locks first", "Clutch pedal effort"
        });
        assertThat(bench.headline()).containsExactly("414 N", "50 mm", "56 %", "above 0.49 g", "232 N");
        int findings = Cars.assessed(BEFORE).findings().size();
        assertThat(bench.at(".findings article")).hasCount(findings);
        assertThat(bench.at(".findings article h3").first()).containsText("Stop: Rear wheels lock first");
    }

    @Test
    void oneClickOnAStepperChangesEverythingTogether() {
        List<String> before = bench.headline();
        String verdict = bench.verdict();
        bench.at("[aria-label='Rear master bore, larger']").click();
        assertThat(bench.at("#headline .card-value").first()).not().hasText(before.getFirst());
        everyValueChanged(before, verdict);
        assertThat(Cars.read(file)).isEqualTo(Cars.replaced(BEFORE, "bore: 5/8 in (part sheet)", "bore: 0.700 in"));
    }

    @Test
    void aTypedBoreChangesEverythingTogetherAndOnlyItsSpanOfTheFile() {
        List<String> before = bench.headline();
        String verdict = bench.verdict();
        Locator box = bench.field(REAR_BORE);
        box.fill("7/8 in");
        box.press("Enter");
        assertThat(bench.at("#headline .card-value").first()).not().hasText(before.getFirst());
        everyValueChanged(before, verdict);
        assertThat(box).hasValue("7/8 in");
        assertThat(Cars.read(file))
                .isEqualTo(Cars.replaced(BEFORE, "bore: 5/8 in (part sheet)", "bore: 7/8 in (part sheet)"));
    }

    private void everyValueChanged(List<String> before, String verdict) {
        List<String> after = bench.headline();
        for (int i = 0; i < OF_THE_BRAKES; i++) {
            assertThat(after.get(i)).isNotEqualTo(before.get(i));
        }
        assertThat(bench.verdict()).isNotEqualTo(verdict);
    }

    @Test
    void aBadValueIsToldAndWhatWasTypedStays() {
        Locator box = bench.field(REAR_BORE);
        box.fill("7/8 kg");
        box.press("Enter");
        assertThat(bench.at(".refusal")).containsText("Not saved.");
        assertThat(bench.at(".refusal")).containsText("kg");
        assertThat(box).hasValue("7/8 kg");
        assertThat(box).hasAttribute("aria-invalid", "true");
        assertThat(file).hasContent(BEFORE);
        box.press("Escape");
        assertThat(box).hasValue("5/8 in");
        assertThat(bench.at(".refusal")).hasCount(0);
        bench.complaints().removeIf(REFUSED.asMatchPredicate());
    }

    @Test
    void curesAreTriedOneAfterTheOtherAndTakenBack() {
        bench.at(".cure button").first().click();
        assertThat(bench.at(".verdict")).containsText("the bearing pushes the fingers");
        String balanced = Cars.replaced(BEFORE, "offset: 0 mm (measured)", "offset: 6.36 mm (computed)");
        assertThat(Cars.read(file)).isEqualTo(balanced);
        bench.at(".cure button").first().click();
        assertThat(bench.at(".verdict-word")).not().hasText("Stop.");
        assertThat(Cars.read(file))
                .isEqualTo(Cars.replaced(
                        balanced,
                        "travel_to_stop: 135 mm (measured)   # to",
                        "travel_to_stop: 118.1 mm (computed)   # to"));
        bench.at(".tools button").first().click();
        assertThat(bench.at(".verdict")).containsText("the bearing pushes the fingers");
        assertThat(file).hasContent(balanced);
        bench.at(".tools button").first().click();
        assertThat(bench.at(".verdict")).containsText("the rear wheels lock before the front ones");
        assertThat(file).hasContent(BEFORE);
        assertThat(bench.headline()).containsExactly("414 N", "50 mm", "56 %", "above 0.49 g", "232 N");
    }

    @Test
    void aTickedRuleSetIsWrittenIntoTheList() {
        bench.field("intent.rule_sets").getByText("fmvss 135").click();
        assertThat(bench.at(".findings")).containsText(Pattern.compile("by FMVSS 135", Pattern.CASE_INSENSITIVE));
        assertThat(Cars.read(file)).isEqualTo(Cars.replaced(BEFORE, "[un_r13h]", "[un_r13h, fmvss_135]"));
    }

    @Test
    void everythingCanBeDoneFromTheKeyboard() {
        tabTo(
                "document.activeElement.matches('.inputs summary') && document.activeElement.textContent.trim().startsWith('the car')");
        bench.page().keyboard().press("Enter");
        tabTo("document.activeElement.id === 'field-car-grip'");
        bench.page().keyboard().press("Control+A");
        bench.page().keyboard().type("0.8");
        bench.page().keyboard().press("Enter");
        assertThat(bench.at("#headline .card-note").nth(3)).hasText("tyre grip 0.8");
        assertThat(Cars.read(file)).isEqualTo(Cars.replaced(BEFORE, "1.0 ± 0.1 (assumed)", "0.8 (assumed)"));
    }

    private void tabTo(String reached) {
        for (int i = 0; i < 400; i++) {
            bench.page().keyboard().press("Tab");
            if (Boolean.TRUE.equals(bench.page().evaluate(reached))) {
                return;
            }
        }
        throw new AssertionError("400 times Tab did not reach: " + reached);
    }

    @Test
    void theUnitsAreSwitchedAndRemembered() {
        bench.at(".units select").selectOption("us");
        assertThat(bench.at("#headline .card-value").first()).hasText("93 lbf");
        bench.page().reload();
        assertThat(bench.at("#headline .card-value").first()).hasText("93 lbf");
        assertThat(file).hasContent(BEFORE);
    }

    @Test
    void aResultOpensToItsFormulasAndSources() {
        bench.at("#headline button").first().click();
        assertThat(bench.at("dialog[open]")).containsText("Pedal effort: 414 N");
        assertThat(bench.at("dialog[open]")).containsText("F = m a");
        assertThat(bench.at("dialog[open]")).containsText("Source: Newton's second law");
        bench.page().keyboard().press("Escape");
        assertThat(bench.at("dialog[open]")).hasCount(0);
    }

    @Test
    void theViewInSpaceIsLoadedWhenAskedForTurnedByKeysAndMeasures() {
        Locator space = bench.at("#space");
        space.locator("> button").click();
        space.locator(".space-buttons").waitFor();
        Locator canvas = space.locator("canvas");
        byte[] before = canvas.screenshot();
        canvas.focus();
        bench.page().keyboard().press("ArrowRight");
        assertThat(canvas.screenshot()).as("turned").isNotEqualTo(before);
        space.locator(".space-measure select").first().selectOption("front master to tee, start");
        space.locator(".space-measure select").last().selectOption("front master to tee, corner 1");
        assertThat(space.locator("output")).hasText("150.0 mm apart: 150.0 mm forward, 0.0 mm left, 0.0 mm up.");
        canvas.click();
        assertThat(space.locator(".space-note button")).hasText("go to it");
    }
}
