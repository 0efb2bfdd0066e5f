package org.brakewright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The scripts by which people enter: runnable, careful, and right about which JDK they take. */
class ScriptsTest {
    private record Run(int exit, String out, String err) {}

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"brakewright", "check", ".ci/run", ".ci/bench"})
    void scriptsCanBeRunAndStopAtTheFirstFault(String script) {
        Path file = House.ROOT.resolve(script);
        assertThat(file).isExecutable();
        assertThat(House.text(file)).startsWith("#!/usr/bin/env bash\n").contains("\nset -euo pipefail\n");
    }

    /** A JDK states its version in the file `release`; the forms are those of JDK 8 and of JDK 9 and later. */
    @ParameterizedTest
    @CsvSource({
        "25.0.3, 25.0.3",
        "27-ea 26, 26",
        "1.8.0_402 17.0.1 30.0.1 25, 25",
    })
    void theOldestJdkThatWillDoIsTaken(String installed, String taken) throws Exception {
        for (String version : installed.split(" ", -1)) {
            jdk(version);
        }
        Run run = bash("find_jdk '" + folder + "' && printf %s \"$JAVA_HOME\"", Map.of());
        assertThat(run).isEqualTo(new Run(0, folder.resolve("jdk " + taken).toString(), ""));
    }

    @Test
    void javaHomeComesFirst() throws Exception {
        jdk("25.0.1");
        Path chosen = jdk("27");
        Run run = bash("find_jdk '" + folder + "' && printf %s \"$JAVA_HOME\"", Map.of("JAVA_HOME", chosen.toString()));
        assertThat(run.out()).isEqualTo(chosen.toString());
    }

    @Test
    void withoutAJdkOneSentenceSaysWhatWasLookedForAndWhere() throws Exception {
        jdk("17.0.15");
        jdk("1.8.0_402");
        Run run = bash("find_jdk '" + folder + "'", Map.of());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains("JDK) 25 or newer", "JAVA_HOME is not set", folder.toString(), "JDK 8, 17");
    }

    /** The real jars, laid out as the launcher lays them out, in a folder whose name has a space. */
    @Test
    void theLauncherPassesArgumentsAndExitCodeThroughALinkFromAnotherFolder() throws Exception {
        Path house = layOut(Files.createDirectory(folder.resolve("my cars")));
        Path link = Files.createSymbolicLink(folder.resolve("a link"), house.resolve("brakewright"));
        var noBuild = Map.of("BRAKEWRIGHT_NO_BUILD", "1");
        Run help = run(List.of(link.toString(), "--help"), noBuild);
        assertThat(help.exit()).as(help.toString()).isZero();
        assertThat(help.out()).contains("check");
        Run wrong = run(List.of(link.toString(), "no such command"), noBuild);
        assertThat(wrong.exit()).as(wrong.toString()).isEqualTo(2);
        assertThat(wrong.err()).contains("no such command");
    }

    private static Path layOut(Path house) throws IOException {
        Path app = House.ROOT.resolve("modules/app/target");
        Path lib = Files.createDirectories(house.resolve(".build/lib"));
        Files.createDirectory(house.resolve(".ci"));
        Files.createFile(house.resolve(".build/stamp"));
        for (String script : List.of("brakewright", ".ci/find-jdk")) {
            Files.copy(House.ROOT.resolve(script), house.resolve(script), StandardCopyOption.COPY_ATTRIBUTES);
        }
        try (var own = Files.list(app);
                var libraries = Files.list(app.resolve("lib"))) {
            for (Path jar : Stream.concat(own, libraries)
                    .filter(file -> file.toString().endsWith(".jar"))
                    .toList()) {
                Files.copy(jar, lib.resolve(jar.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return house;
    }

    private Path jdk(String version) throws IOException {
        Path home = folder.resolve("jdk " + version);
        Path compiler = Files.createDirectories(home.resolve("bin")).resolve("javac");
        assertThat(Files.createFile(compiler).toFile().setExecutable(true)).isTrue();
        Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + version + "\"\n");
        return home;
    }

    private Run bash(String command, Map<String, String> more) throws Exception {
        String source = "set -euo pipefail; source '" + House.ROOT.resolve(".ci/find-jdk") + "'; ";
        return run(List.of("bash", "-c", source + command), more);
    }

    private Run run(List<String> command, Map<String, String> more) throws Exception {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        var builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("JAVA_HOME");
        builder.environment().putAll(more);
        Process process = builder.start();
        process.getOutputStream().close();
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
