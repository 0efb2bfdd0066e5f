package org.brakewright.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.brakewright.analysis.working.Step;
import org.brakewright.analysis.working.Workings;
import org.brakewright.app.Cars;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Rule;
import org.brakewright.findings.Rules;
import org.brakewright.findings.State;
import org.brakewright.findings.cure.Change;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence that can be asked for is there, can be filled, and is asked for by some car. */
class CatalogueTest {
    private static final Catalogue FINDINGS = Catalogue.of("findings.properties");
    private static final Catalogue LAWS = Catalogue.of("workings.properties");
    private static final Pattern BRACES = Pattern.compile("[{}]");

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everySentenceOfEveryCarIsFilled(UnitSystem system) {
        FindingWords words = new FindingWords(new Show(system));
        assertThat(OddCars.findings()).hasSizeGreaterThan(1000).allSatisfy(finding -> {
            assertThat(words.title(finding)).isNotBlank().doesNotContainPattern(BRACES);
            assertThat(words.sentence(finding))
                    .doesNotContainPattern(BRACES)
                    .doesNotContain("NaN", "Infinity", "null", "  ")
                    .matches("(?s)\\p{Lu}.*[.]");
            assertThat(words.advice(finding)).endsWith(".").doesNotContainPattern(BRACES);
        });
    }

    /** The other way round: no sentence stands there that no car gets, and each stands under a state that exists. */
    @Test
    void everySentenceIsToldToSomeCar() {
        Set<String> told = OddCars.findings().stream()
                .map(FindingWords::sentenceKey)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(told).isEqualTo(sentenceKeys());
    }

    @Test
    void everyRuleHasTitleAndAdviceAndNothingElseHas() {
        Set<String> rules = Rules.all().stream().map(Rule::key).collect(Collectors.toCollection(TreeSet::new));
        assertThat(rules).hasSizeGreaterThan(10);
        assertThat(withEnding(".title")).isEqualTo(rules);
        assertThat(withEnding(".advice")).isEqualTo(rules);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void curesAreTold(String car) {
        Assessment assessment = Cars.assessed(Cars.text(car));
        CureWords cures = new CureWords(new Show(UnitSystem.METRIC));
        List<String> told = assessment.findings().stream()
                .map(Finding::cure)
                .filter(Objects::nonNull)
                .map(cures::sentence)
                .toList();
        assertThat(told)
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(sentence)
                        .contains("effort", "travel")
                        .containsAnyOf("rear first", "what frees it")
                        .endsWith(".")
                        .doesNotContainPattern(BRACES));
    }

    @Test
    void everyKindOfChangeHasWords() {
        assertThat(Change.Kind.values())
                .allSatisfy(kind -> assertThat(FINDINGS.keys())
                        .anyMatch(key -> key.startsWith("cure." + kind.name().toLowerCase(java.util.Locale.ROOT))));
    }

    @Test
    void everyLawHasNameFormulaAndSource() {
        Set<String> used = OddCars.assessed().stream()
                .flatMap(car -> Workings.of(car.resolved(), car.analysis()).stream())
                .flatMap(working -> working.steps().stream())
                .map(Step::law)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(used).hasSizeGreaterThan(8).allSatisfy(law -> {
            assertThat(LawWords.name(law)).isNotBlank();
            assertThat(LawWords.formula(law)).isNotBlank();
            assertThat(LawWords.source(law)).isNotBlank();
        });
        assertThat(LAWS.keys().stream().map(key -> key.substring(0, key.indexOf('.'))))
                .hasSameElementsAs(used);
    }

    private static Set<String> sentenceKeys() {
        Pattern sentence = Pattern.compile("[a-z_]+\\.("
                + Arrays.stream(State.values()).map(FindingWords::key).collect(Collectors.joining("|"))
                + ")(\\.[a-z_0-9]+)?");
        return FINDINGS.keys().stream()
                .filter(key ->
                        !key.startsWith("state.") && sentence.matcher(key).matches())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> withEnding(String ending) {
        return FINDINGS.keys().stream()
                .filter(key -> key.endsWith(ending))
                .map(key -> key.substring(0, key.length() - ending.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
