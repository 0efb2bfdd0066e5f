package org.brakewright.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same build gives the same bytes: calculations know no clock, chance, locale, file or logger. */
class PurityTest {
    private static final String[] CALCULATING = {
        "org.brakewright.quantity..",
        "org.brakewright.kernel..",
        "org.brakewright.model..",
        "org.brakewright.analysis..",
        "org.brakewright.findings.."
    };

    private static final Set<String> CALCULATING_ROOMS = Set.of("quantity", "kernel", "model", "analysis", "findings");

    /** Calls that read something beside the parameters, as owner, method and parameter types. */
    private static final List<Pattern> READS_THE_WORLD = Stream.of(
                    "java\\.lang\\.System\\.(currentTimeMillis|nanoTime|getenv|getProperty|lineSeparator|out|err|in)\\b.*",
                    "java\\.time\\..*\\.now\\(.*",
                    "java\\.lang\\.Math\\.random\\(.*",
                    "java\\.lang\\.StrictMath\\.random\\(.*",
                    "java\\.util\\.UUID\\.randomUUID\\(.*",
                    "java\\.util\\.Collections\\.shuffle\\(java\\.util\\.List\\)",
                    "java\\.util\\.Locale\\.getDefault\\(.*",
                    "java\\.util\\.TimeZone\\.getDefault\\(.*",
                    "java\\.time\\.ZoneId\\.systemDefault\\(.*",
                    "java\\.lang\\.String\\.(toLowerCase|toUpperCase)\\(\\)",
                    "java\\.lang\\.String\\.format\\(java\\.lang\\.String, .*",
                    "java\\.lang\\.String\\.formatted\\(.*",
                    "java\\.text\\.(Decimal|Number)Format\\.(get\\w+\\(\\)|<init>\\((java\\.lang\\.String)?\\))",
                    "java\\.lang\\.System\\.identityHashCode\\(.*")
            .map(Pattern::compile)
            .toList();

    @Test
    void noTypeOfTheWorldIsKnown() {
        noClasses()
                .that()
                .resideInAnyPackage(CALCULATING)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.util.logging..", "org.slf4j..", "java.net..", "java.sql..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File\\w*|PrintStream|RandomAccessFile)"
                        + "|java\\.util\\.(Random|concurrent\\.ThreadLocalRandom)|java\\.security\\.SecureRandom"
                        + "|java\\.util\\.random\\..*|java\\.time\\.(InstantSource|Clock)|java\\.lang\\.Thread")
                .check(House.CLASSES);
    }

    @Test
    void noCallReadsTheWorld() {
        List<JavaAccess<?>> accesses = House.CLASSES.stream()
                .filter(type -> CALCULATING_ROOMS.contains(House.room(type)))
                .<JavaAccess<?>>flatMap(PurityTest::accesses)
                .toList();
        assertThat(accesses).isNotEmpty();
        assertThat(accesses.stream().filter(PurityTest::readsTheWorld).map(JavaAccess::getDescription))
                .as("calls that make a result depend on more than its parameters")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.lang.System.nanoTime()",
                "java.lang.System.out",
                "java.time.LocalDate.now(java.time.ZoneId)",
                "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
                "java.lang.String.toLowerCase()"
            })
    void thePatternsCatchWhatTheyName(String call) {
        assertThat(READS_THE_WORLD).anyMatch(pattern -> pattern.matcher(call).matches());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.lang.System.arraycopy(java.lang.Object, int, java.lang.Object, int, int)",
                "java.lang.String.format(java.util.Locale, java.lang.String, [Ljava.lang.Object;)",
                "java.lang.String.toLowerCase(java.util.Locale)"
            })
    void thePatternsSpareWhatDependsOnParametersOnly(String call) {
        assertThat(READS_THE_WORLD).noneMatch(pattern -> pattern.matcher(call).matches());
    }

    private static Stream<JavaAccess<?>> accesses(JavaClass type) {
        return type.getAccessesFromSelf().stream().map(access -> (JavaAccess<?>) access);
    }

    private static boolean readsTheWorld(JavaAccess<?> access) {
        String target = access.getTarget().getFullName();
        return READS_THE_WORLD.stream()
                .anyMatch(pattern -> pattern.matcher(target).matches());
    }
}
