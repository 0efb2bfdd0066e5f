package org.brakewright.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Finds what the rules look at: the rooms, their classes, the sources and the pages. */
final class House {
    static final String BASE = "org.brakewright.";

    private static final Set<String> NOT_OURS = Set.of(".git", ".build", "target", "node_modules", "dist");

    /** The folder that holds the launcher and the rooms. */
    static final Path ROOT = root();

    /** The compiled main code of every room that has some, without the benchmarks. */
    static final JavaClasses CLASSES = new ClassFileImporter()
            .importPaths(rooms().stream()
                    .map(room -> room.resolve("target/classes"))
                    .filter(Files::isDirectory)
                    .toList());

    private House() {}

    /** Folders in {@code modules/} with main code in Java, without the benchmarks. */
    static List<Path> rooms() {
        return modules().stream()
                .filter(module -> !module.endsWith("bench"))
                .filter(module -> files(module.resolve("src/main"), House::isJava).stream()
                        .findAny()
                        .isPresent())
                .toList();
    }

    /** Every Maven module in {@code modules/}. */
    static List<Path> modules() {
        try (var folders = Files.list(ROOT.resolve("modules"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("pom.xml")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The main code of every room, in Java. */
    static List<Path> javaSources() {
        return rooms().stream()
                .flatMap(room -> files(room.resolve("src/main"), House::isJava).stream())
                .toList();
    }

    /** Every file that is written by hand, without what a build leaves behind. */
    static List<Path> ownFiles() {
        return files(ROOT, file -> true);
    }

    /** The files below {@code folder} that {@code wanted} accepts, sorted; none when there is no such folder. */
    static List<Path> files(Path folder, Predicate<Path> wanted) {
        var found = new ArrayList<Path>();
        if (Files.isDirectory(folder)) {
            walk(folder, found);
        }
        return found.stream().filter(wanted).sorted().toList();
    }

    static boolean isJava(Path file) {
        return file.toString().endsWith(".java");
    }

    static boolean isPage(Path file) {
        return file.toString().endsWith(".md");
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** The path as seen from the root, for messages. */
    static String name(Path file) {
        return ROOT.relativize(file).toString();
    }

    /** The room a class lives in: the first package below the base package. */
    static String room(JavaClass type) {
        String rest = type.getPackageName().substring(BASE.length());
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }

    static boolean isOurs(JavaClass type) {
        return type.getPackageName().startsWith(BASE);
    }

    private static void walk(Path folder, List<Path> found) {
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                    boolean skip = NOT_OURS.contains(dir.getFileName().toString());
                    return skip ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    found.add(file);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null
                && !(Files.exists(folder.resolve("brakewright")) && Files.exists(folder.resolve("modules")))) {
            folder = folder.getParent();
        }
        if (folder == null) {
            throw new IllegalStateException("no folder above " + Path.of("").toAbsolutePath() + " holds the launcher");
        }
        return folder;
    }
}
