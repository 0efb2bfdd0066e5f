package org.brakewright.app.page;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakewright.analysis.ledger.ClutchHeadline;
import org.brakewright.app.Cars;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.buildfile.EditOutcome;
import org.brakewright.buildfile.SpanEdit;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageMakerTest {
    private static final PageMaker.Frame FRAME = new PageMaker.Frame(1, "car.yaml", false, false, false);

    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void effortTravelBalanceAndMarginAreNeverShownApart(String car) {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(page(Cars.text(car), system).headline().stream().map(PageView.Card::key))
                    .startsWith("effort", "travel", "balance", "margin");
        }
    }

    /** The card is there with the clutch, in the state of its worst finding, and tells a clutch that does not free. */
    @Test
    void aClutchHasACardOfItsOwn() {
        assertThat(page(Cars.text("shop-pickup"), UnitSystem.METRIC).headline()).hasSize(4);
        PageView.Card card =
                page(Cars.text("hill-climber"), UnitSystem.METRIC).headline().getLast();
        assertThat(card.key()).isEqualTo("clutch");
        assertThat(card.note()).contains("frees with", "times the engine's torque");
        String small = Cars.text("hill-climber", "master: {bore: 1 in", "master: {bore: 1/2 in");
        PageView.Card tooShort = page(small, UnitSystem.METRIC).headline().getLast();
        assertThat(tooShort.state()).isEqualTo("stop");
        assertThat(tooShort.note()).contains("does not free");
    }

    /** A working that is opened from a card is headed by the number on the card. */
    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void workingsOpenTheNumberOnTheirCard(String car) {
        PageView page = page(Cars.text(car), UnitSystem.METRIC);
        Map<String, Set<String>> results = page.workings().stream()
                .collect(Collectors.groupingBy(
                        PageView.Working::key, Collectors.mapping(PageView.Working::result, Collectors.toSet())));
        assertThat(page.headline())
                .allSatisfy(card -> assertThat(results.get(card.working()))
                        .as(card.key())
                        .anyMatch(result -> card.value().endsWith(result)));
    }

    /** A car that no push stops as hard as wanted has nothing to open but says so. */
    @Test
    void aCardWithoutANumberOpensNothing() {
        String hopeless = Cars.text("hill-climber", "hard_stop: 0.9 g", "hard_stop: 1.2 g")
                .replace("0.40 ± 0.04 (part sheet)", "0.05")
                .replace("kg (measured)", "kg")
                .replace("axle: 3", "axle: 43");
        PageView page = page(hopeless, UnitSystem.METRIC);
        assertThat(page.headline().getFirst().value()).isEqualTo("beyond any push");
        assertThat(page.headline().subList(0, 3)).allSatisfy(card -> {
            assertThat(card.working()).isNull();
            assertThat(card.state()).isEqualTo("stop");
        });
    }

    /** An edit that the page offers is understood by the file, and brings what its sentence promises. */
    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void curesBringWhatTheyPromise(String car) {
        Assessment before = Cars.assessed(Cars.text(car));
        PageView page = page(Cars.text(car), UnitSystem.METRIC);
        int tried = 0;
        for (int i = 0; i < page.findings().size(); i++) {
            PageView.Cure cure = page.findings().get(i).cure();
            if (cure != null) {
                boolean ofClutch = page.findings().get(i).key().startsWith("clutch_");
                assertThat(cure.sentence()).contains(promised(edited(Cars.text(car), cure.edits()), ofClutch));
                tried++;
            }
        }
        assertThat(tried).isPositive();
        assertThat(page.findings()).hasSameSizeAs(before.findings());
    }

    private static List<String> promised(String text, boolean ofClutch) {
        if (ofClutch) {
            ClutchHeadline clutch =
                    requireNonNull(Cars.assessed(text).headline().clutch());
            Show show = new Show(UnitSystem.METRIC);
            return List.of(
                    "clutch effort " + show.value(clutch.effortN(), Dimension.FORCE),
                    "bearing travel " + show.value(clutch.spareM(), Dimension.LENGTH));
        }
        List<PageView.Card> after = page(text, UnitSystem.METRIC).headline();
        return List.of(
                "effort " + after.get(0).value(),
                "travel " + after.get(1).value(),
                "rear first " + after.get(3).value());
    }

    /** Every input that a finding, a part of the picture or the ledger leads to can be typed on the page. */
    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void whateverLeadsToAnInputFindsIt(String car) {
        PageView page = page(Cars.text(car), UnitSystem.METRIC);
        Set<String> inputs = page.inputs().stream()
                .flatMap(section -> section.fields().stream())
                .map(PageView.FieldView::path)
                .collect(Collectors.toSet());
        assertThat(page.ledger().stream().map(PageView.LedgerRow::path)).isSubsetOf(inputs);
        assertThat(List.of("foot", "pedal", "front_master", "front_brake", "rear_brake", "front_tyre"))
                .allSatisfy(part ->
                        assertThat(inputs).contains(page.chain().inputs().get(part)));
    }

    private static String edited(String text, List<PageView.Edit> edits) {
        String edited = text;
        for (PageView.Edit edit : edits) {
            edited = switch (SpanEdit.apply(edited, edit.path(), edit.text())) {
                case EditOutcome.Edited done -> done.text();
                case EditOutcome.Refused refused -> throw new AssertionError(refused.problem());
            };
        }
        return edited;
    }

    private static PageView page(String text, UnitSystem system) {
        return new PageMaker(new Show(system)).make(Cars.assessed(text), FRAME);
    }
}
