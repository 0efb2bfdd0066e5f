package org.brakewright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pages lead somewhere: to rooms, to laws, to decisions, to one another. */
class PagesTest {
    private static final int MOST_LINES = 15;

    private static final List<String> SAID_OF_A_ROOM = List.of("takes", "gives", "never", "start reading at");

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s#]+)(#[^)\\s]*)?\\)");

    private static final Pattern CLASS_NAME = Pattern.compile("`(?:[a-z][\\w.]*\\.)?([A-Z]\\w*)[^`]*`");

    @Test
    void everyModuleHasAShortReadme() {
        assertThat(House.modules()).isNotEmpty();
        assertThat(House.modules().stream()
                        .map(PagesTest::readme)
                        .filter(readme -> !Files.exists(readme) || lines(readme) > MOST_LINES)
                        .map(House::name))
                .as("missing, or longer than %d lines", MOST_LINES)
                .isEmpty();
    }

    @Test
    void everyRoomSaysWhatItTakesAndGives() {
        assertThat(House.rooms()).isNotEmpty();
        assertThat(House.rooms().stream()
                        .map(PagesTest::readme)
                        .filter(readme -> !Files.exists(readme) || !saysAll(readme))
                        .map(House::name))
                .as("pages that do not say all of %s", SAID_OF_A_ROOM)
                .isEmpty();
    }

    @Test
    void everyLinkBetweenPagesLeadsToAFile() {
        List<Path> pages = House.ownFiles().stream().filter(House::isPage).toList();
        assertThat(pages).hasSizeGreaterThan(10);
        assertThat(pages.stream().flatMap(PagesTest::deadLinks))
                .as("dead links")
                .isEmpty();
    }

    @Test
    void everyPageOfLawsNamesAClassThatStatesThem() {
        Set<String> laws = kernel().map(JavaClass::getSimpleName).collect(Collectors.toSet());
        List<Path> pages = pages("docs/laws");
        assertThat(laws).isNotEmpty();
        assertThat(pages).isNotEmpty();
        assertThat(pages.stream()
                        .filter(page -> classNames(page).noneMatch(laws::contains))
                        .map(House::name))
                .as("pages that name no class of the kernel")
                .isEmpty();
    }

    @Test
    void everyPackageOfLawsIsExplainedOnAPage() {
        Set<String> named =
                pages("docs/laws").stream().flatMap(PagesTest::classNames).collect(Collectors.toSet());
        Set<String> packages = kernel().map(JavaClass::getPackageName).collect(Collectors.toCollection(TreeSet::new));
        Set<String> explained = kernel().filter(type -> named.contains(type.getSimpleName()))
                .map(JavaClass::getPackageName)
                .collect(Collectors.toCollection(TreeSet::new));
        packages.remove("org.brakewright.kernel");
        assertThat(packages).isNotEmpty();
        assertThat(explained).isEqualTo(packages);
    }

    @Test
    void decisionsAreNumberedWithoutAGap() {
        List<String> names = House.files(House.ROOT.resolve("docs/decisions"), House::isPage).stream()
                .map(page -> page.getFileName().toString())
                .filter(name -> !name.equals("README.md"))
                .toList();
        assertThat(names).isNotEmpty();
        for (int i = 0; i < names.size(); i++) {
            assertThat(names.get(i)).startsWith(String.format(Locale.ROOT, "%04d-", i + 1));
        }
    }

    private static Path readme(Path module) {
        return module.resolve("README.md");
    }

    private static boolean saysAll(Path readme) {
        String text = House.text(readme).toLowerCase(Locale.ROOT);
        return SAID_OF_A_ROOM.stream().allMatch(text::contains);
    }

    private static long lines(Path page) {
        return House.text(page).lines().count();
    }

    private static List<Path> pages(String folder) {
        return House.files(House.ROOT.resolve(folder), House::isPage).stream()
                .filter(page -> !page.endsWith("README.md"))
                .toList();
    }

    /** The simple names of the classes that a page names in code quotes. */
    private static Stream<String> classNames(Path page) {
        return CLASS_NAME.matcher(House.text(page)).results().map(match -> match.group(1));
    }

    private static Stream<JavaClass> kernel() {
        return House.CLASSES.stream()
                .filter(type -> House.room(type).equals("kernel"))
                .filter(type -> !type.getSimpleName().equals("package-info"));
    }

    private static Stream<String> deadLinks(Path page) {
        return LINK.matcher(House.text(page))
                .results()
                .map((MatchResult match) -> match.group(1))
                .filter(target -> !target.matches("[a-z]+:.*"))
                .filter(target -> !Files.exists(page.resolveSibling(target)))
                .map(target -> House.name(page) + " -> " + target);
    }
}
