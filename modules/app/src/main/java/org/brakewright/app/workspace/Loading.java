package org.brakewright.app.workspace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.LocatedProblem;
import org.brakewright.buildfile.Places;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
import org.brakewright.findings.Assessment;
import org.brakewright.model.Build;
import org.brakewright.model.Problem;

/** From a file to an assessment, or to everything that is wrong with it. */
public sealed interface Loading {

    /**
     * Usable.
     *
     * @param assessment of the build
     * @param stale whether a file that the build file names reads differently by now
     */
    record Loaded(Assessment assessment, BooleanSupplier stale) implements Loading {}

    /**
     * Not usable.
     *
     * @param problems all of them
     */
    record Refused(List<LocatedProblem> problems) implements Loading {}

    /** Loads a file in full. */
    static Loading file(Path file) {
        return file(file, Assess::assess);
    }

    /** Loads a file but for its stops over time. */
    static Loading first(Path file) {
        return file(file, Assess::first);
    }

    /** Loads a file as far as drawings need it. */
    static Loading forDrawings(Path file) {
        return file(file, Assess::forDrawings);
    }

    private static Loading file(Path file, Function<Build, AssessOutcome> assess) {
        try {
            if (Files.isDirectory(file)) {
                return refused(file, "This is a folder, not a build file.");
            }
            if (Files.size(file) > BuildFile.LARGEST_BYTES) {
                return refused(file, "The file is larger than 1 MiB, which no build file is.");
            }
            Folder folder = Folder.of(file);
            return of(BuildFile.readUtf8(Files.readAllBytes(file), folder), folder, assess);
        } catch (NoSuchFileException e) {
            return refused(file, "There is no such file.");
        } catch (IOException e) {
            return refused(file, "The file cannot be read: " + e.getMessage() + ".");
        }
    }

    /** Loads a text in full as if it stood in a file. */
    static Loading text(String text, Path file) {
        return text(text, file, Assess::assess);
    }

    /** Loads a text but for its stops over time as if it stood in a file. */
    static Loading first(String text, Path file) {
        return text(text, file, Assess::first);
    }

    private static Loading text(String text, Path file, Function<Build, AssessOutcome> assess) {
        Folder folder = Folder.of(file);
        return of(BuildFile.read(text, folder), folder, assess);
    }

    private static Loading of(ReadOutcome read, Folder folder, Function<Build, AssessOutcome> assess) {
        return switch (read) {
            case ReadOutcome.Unusable unusable -> new Refused(unusable.problems());
            case ReadOutcome.Usable usable -> assess(usable, folder, assess);
        };
    }

    private static Loading assess(ReadOutcome.Usable usable, Folder folder, Function<Build, AssessOutcome> assess) {
        return switch (assess.apply(usable.build())) {
            case AssessOutcome.Assessed assessed -> new Loaded(assessed.assessment(), folder::changed);
            case AssessOutcome.Unusable unusable -> new Refused(located(unusable.problems(), usable.places()));
        };
    }

    private static List<LocatedProblem> located(List<Problem> problems, Places places) {
        return problems.stream().map(places::locate).toList();
    }

    private static Loading refused(Path file, String message) {
        return new Refused(
                List.of(new LocatedProblem(1, 1, new Problem("", file.toString(), message, "a build file in YAML"))));
    }
}
