package org.brakewright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** One finding is one class, one test and one page; none may be missing, and none may be left over. */
class FindingPagesTest {
    private static final String RULE = "org.brakewright.findings.Rule";

    @Test
    void everyRuleHasATest() {
        Set<String> tests = House.files(House.ROOT.resolve("modules/findings/src/test"), House::isJava).stream()
                .map(file -> file.getFileName().toString().replace(".java", ""))
                .collect(Collectors.toSet());
        assertThat(rules()).isNotEmpty();
        assertThat(tests)
                .containsAll(rules().stream().map(rule -> rule + "Test").toList());
    }

    @Test
    void rulesAndPagesMatch() {
        Set<String> wanted =
                rules().stream().map(rule -> key(rule) + ".md").collect(Collectors.toCollection(TreeSet::new));
        assertThat(wanted).isNotEmpty();
        assertThat(pages()).isEqualTo(wanted);
    }

    @Test
    void everyRuleIsKeyedByItsName() {
        List<Path> sources = House.files(House.ROOT.resolve("modules/findings/src/main"), House::isJava);
        assertThat(rules()).isNotEmpty();
        for (String rule : rules()) {
            assertThat(sources)
                    .filteredOn(file -> file.endsWith(rule + ".java"))
                    .singleElement()
                    .satisfies(file -> assertThat(House.text(file)).contains("return \"" + key(rule) + "\";"));
        }
    }

    /** {@code RearLocksFirst} has the key {@code rear_locks_first} and the page {@code rear_locks_first.md}. */
    private static String key(String rule) {
        return rule.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }

    private static List<String> rules() {
        return House.CLASSES.stream()
                .filter(type -> type.isAssignableTo(RULE))
                .filter(type -> !type.isInterface() && !type.getModifiers().contains(JavaModifier.ABSTRACT))
                .map(JavaClass::getSimpleName)
                .sorted()
                .toList();
    }

    private static Set<String> pages() {
        return House.files(House.ROOT.resolve("docs/findings"), House::isPage).stream()
                .map(Path::getFileName)
                .map(Path::toString)
                .filter(name -> !name.equals("README.md"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
