package org.brakewright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Files stay short, packages carry a signboard, and nothing names the place where it was written. */
class FilesTest {
    private static final int MOST_LINES = 300;

    private static final Pattern SIGNBOARD =
            Pattern.compile("/\\*\\*.*\\w.*\\*/\\s*@NullMarked\\s+package org\\.brakewright\\.", Pattern.DOTALL);

    private static final Pattern TEXT = Pattern.compile(
            ".*(\\.(java|md|xml|ts|tsx|mts|js|mjs|css|html|svg|json|ya?ml|properties|csv|txt|sh|npmrc|editorconfig)"
                    + "|/(brakewright|check|run|bench|find-jdk|LICENSE|\\.git\\w+))");

    /** Folders of the machine where this was written; in pieces, so that this file does not name them either. */
    private static final Pattern MACHINE_FOLDER = Pattern.compile("(?<![\\w.)}\\]*-])/(?:" + "wo" + "rk|ro" + "ot)/");

    /** Hosts that hand out packages, in pieces for the same reason. */
    private static final List<String> REGISTRIES = Stream.of(
                    "registry. npmjs",
                    "npmjs. com",
                    "registry. yarnpkg",
                    "repo. maven",
                    "repo1. maven",
                    "central. sonatype",
                    "oss. sonatype",
                    "pypi. org",
                    "python hosted",
                    "crates. io",
                    "deb. debian",
                    "security. debian",
                    "archive. ubuntu",
                    "proxy. golang",
                    "docker. io",
                    "ghcr. io")
            .map(pieces -> pieces.replace(" ", ""))
            .toList();

    @Test
    void noSourceIsLongerThanTheCap() {
        List<Path> sources = sources();
        assertThat(sources).hasSizeGreaterThan(20);
        assertThat(sources.stream()
                        .filter(file -> lines(file) > MOST_LINES)
                        .map(file -> House.name(file) + ": " + lines(file)))
                .as("sources with more than %d lines", MOST_LINES)
                .isEmpty();
    }

    @Test
    void everyPackageHasASignboard() {
        var signs = House.javaSources().stream()
                .map(file -> file.resolveSibling("package-info.java"))
                .distinct()
                .toList();
        assertThat(signs).isNotEmpty();
        assertThat(signs.stream().filter(sign -> !isSignboard(sign)).map(House::name))
                .as("missing, or without a sentence and @NullMarked")
                .isEmpty();
    }

    @Test
    void nothingNamesTheMachineItWasWrittenOn() {
        assertThat(texts()).hasSizeGreaterThan(20);
        assertThat(texts().stream()
                        .filter(file -> MACHINE_FOLDER.matcher(latin(file)).find())
                        .map(House::name))
                .as("files that name a folder of the machine they were written on")
                .isEmpty();
    }

    @Test
    void nothingNamesAPackageRegistry() {
        assertThat(texts()).hasSizeGreaterThan(20);
        assertThat(texts().stream()
                        .filter(file -> REGISTRIES.stream().anyMatch(latin(file)::contains))
                        .map(House::name))
                .as("files that name a package registry")
                .isEmpty();
    }

    @Test
    void theWholeHouseIsLookedAt() {
        assertThat(texts().stream().map(House::name)).contains("pom.xml", "brakewright", "check", ".ci/find-jdk");
    }

    private static boolean isSignboard(Path sign) {
        return Files.exists(sign) && SIGNBOARD.matcher(House.text(sign)).find();
    }

    private static List<Path> sources() {
        var page = House.files(
                House.ROOT.resolve("ui/src"), file -> file.toString().matches(".*\\.(ts|tsx|css)"));
        return Stream.concat(House.javaSources().stream(), page.stream())
                .filter(file -> !file.toString().contains(".test."))
                .toList();
    }

    private static List<Path> texts() {
        return House.ownFiles().stream()
                .filter(file -> TEXT.matcher(file.toString()).matches())
                .toList();
    }

    private static long lines(Path file) {
        return House.text(file).lines().count();
    }

    /** Reads a file byte by byte, so that one in another character set does not stop the search. */
    private static String latin(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException("cannot read " + file, e);
        }
    }
}
