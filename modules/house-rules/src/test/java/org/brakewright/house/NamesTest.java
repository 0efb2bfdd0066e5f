package org.brakewright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names say what a thing is, and signatures stay short enough to read. */
class NamesTest {
    private static final Pattern EMPTY_WORD =
            Pattern.compile("(Util|Helper|Manager|Common|Impl)s?(?![a-z])|^Abstract(?![a-z])");

    private static final List<String> EMPTY_PACKAGES =
            List.of("util", "utils", "helper", "helpers", "manager", "common", "impl", "misc");

    private static final int MOST_PARAMETERS = 5;

    @Test
    void noClassIsNamedAfterNothing() {
        assertThat(House.CLASSES).isNotEmpty();
        assertThat(House.CLASSES.stream()
                        .filter(type -> EMPTY_WORD.matcher(type.getSimpleName()).find())
                        .map(JavaClass::getName))
                .as("classes whose name would fit anything")
                .isEmpty();
    }

    @Test
    void noPackageIsNamedAfterNothing() {
        assertThat(House.CLASSES).isNotEmpty();
        assertThat(House.CLASSES.stream().map(JavaClass::getPackageName).filter(NamesTest::hasEmptyPart))
                .as("packages whose name would fit anything")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"HydraulicUtils, true", "AbstractRule, true", "RuleImpl, true", "CommonRail, true"})
    @CsvSource({"Utilization, false", "Implied, false", "Abstraction, false", "Commonwealth, false"})
    void thePatternMeansWholeWords(String name, boolean empty) {
        assertThat(EMPTY_WORD.matcher(name).find()).isEqualTo(empty);
    }

    @Test
    void aMethodTakesAtMostFiveParameters() {
        List<String> tooLong = House.CLASSES.stream()
                .flatMap(type -> type.getMethods().stream())
                .filter(method -> !method.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(method -> method.getRawParameterTypes().size() > MOST_PARAMETERS)
                .map(JavaCodeUnit::getFullName)
                .toList();
        assertThat(House.CLASSES.stream().mapToLong(NamesTest::methods).sum()).isPositive();
        assertThat(tooLong).as("methods with more than five parameters").isEmpty();
    }

    private static boolean hasEmptyPart(String name) {
        return Stream.of(name.split("\\.", -1)).anyMatch(EMPTY_PACKAGES::contains);
    }

    private static long methods(JavaClass type) {
        return type.getMethods().size();
    }
}
