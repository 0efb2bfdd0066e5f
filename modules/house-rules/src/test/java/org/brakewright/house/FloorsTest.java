package org.brakewright.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A room imports only rooms on lower floors; origin of the floors: docs/house/README.md. */
class FloorsTest {
    private static final Map<String, Integer> FLOOR = Map.ofEntries(
            Map.entry("quantity", 1),
            Map.entry("kernel", 2),
            Map.entry("model", 2),
            Map.entry("drawing", 2),
            Map.entry("buildfile", 3),
            Map.entry("analysis", 3),
            Map.entry("findings", 4),
            Map.entry("search", 5),
            Map.entry("shakedown", 5),
            Map.entry("sheets", 6),
            Map.entry("notebook", 6),
            Map.entry("app", 7));

    @Test
    void everyRoomIsCompiledAndHasAFloor() {
        Set<String> written = House.rooms().stream()
                .map(room -> room.getFileName().toString())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> compiled = House.CLASSES.stream().map(House::room).collect(Collectors.toCollection(TreeSet::new));
        assertThat(written).contains("quantity", "kernel", "model", "buildfile", "analysis", "findings", "app");
        assertThat(compiled).isEqualTo(written);
        assertThat(FLOOR.keySet()).containsAll(written);
    }

    @Test
    void packagesStandInTheRoomTheyAreNamedAfter() {
        assertThat(House.javaSources()).isNotEmpty().allSatisfy(file -> {
            Path room = House.ROOT.resolve("modules").relativize(file).getName(0);
            assertThat(file)
                    .startsWith(House.ROOT
                            .resolve("modules")
                            .resolve(room)
                            .resolve("src/main/java/org/brakewright")
                            .resolve(room));
        });
    }

    @Test
    void nothingReachesUp() {
        var steps = House.CLASSES.stream()
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .filter(FloorsTest::betweenRooms)
                .toList();
        assertThat(steps).isNotEmpty();
        assertThat(steps.stream().filter(FloorsTest::notDown).map(Dependency::getDescription))
                .as("imports that do not lead to a lower floor")
                .isEmpty();
    }

    @Test
    void quantityImportsOnlyTheJdk() {
        classes()
                .that()
                .resideInAPackage("org.brakewright.quantity..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", "org.jspecify..", "org.brakewright.quantity..")
                .check(House.CLASSES);
    }

    @Test
    void kernelPackagesDoNotSeeOneAnother() {
        slices().matching("org.brakewright.kernel.(*)..")
                .should()
                .notDependOnEachOther()
                .check(House.CLASSES);
    }

    @Test
    void subjectsGoRoundInNoCircle() {
        slices().matching("org.brakewright.(*).(*)..").should().beFreeOfCycles().check(House.CLASSES);
    }

    /** Laws meet the build in one room only. */
    @ParameterizedTest
    @CsvSource({"buildfile", "findings", "sheets", "app"})
    void lawsAreCalledFromAnalysisOnly(String room) {
        noClasses()
                .that()
                .resideInAPackage("org.brakewright." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.brakewright.kernel..")
                .check(House.CLASSES);
    }

    /** A library that shapes a room's edge is seen by that room alone. */
    @ParameterizedTest
    @CsvSource({"org.snakeyaml, buildfile", "io.javalin, app", "picocli, app"})
    void eachLibraryHasOneRoom(String library, String room) {
        Set<String> users = House.CLASSES.stream()
                .filter(type -> uses(type, library))
                .map(House::room)
                .collect(Collectors.toSet());
        assertThat(users).containsExactly(room);
    }

    @Test
    void eachModuleBelongsToTheBuild() {
        String pom = House.text(House.ROOT.resolve("pom.xml"));
        assertThat(House.modules()).isNotEmpty().allSatisfy(module -> {
            assertThat(pom).contains("<module>" + House.name(module) + "</module>");
            assertThat(Files.exists(module.resolve("pom.xml"))).isTrue();
        });
    }

    private static boolean uses(JavaClass type, String library) {
        return type.getDirectDependenciesFromSelf().stream()
                .anyMatch(step -> step.getTargetClass().getPackageName().startsWith(library));
    }

    private static boolean betweenRooms(Dependency step) {
        return House.isOurs(step.getTargetClass())
                && !House.room(step.getOriginClass()).equals(House.room(step.getTargetClass()));
    }

    private static boolean notDown(Dependency step) {
        int from = FLOOR.getOrDefault(House.room(step.getOriginClass()), 0);
        int to = FLOOR.getOrDefault(House.room(step.getTargetClass()), Integer.MAX_VALUE);
        return to >= from;
    }
}
