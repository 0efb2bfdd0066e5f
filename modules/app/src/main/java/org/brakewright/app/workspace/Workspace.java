package org.brakewright.app.workspace;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.brakewright.buildfile.EditOutcome;
import org.brakewright.buildfile.LocatedProblem;
import org.brakewright.buildfile.SpanEdit;
import org.brakewright.findings.Assessment;

/**
 * A build file being worked on. Every change is written to the file at once, and can be taken back. The file may also be
 * changed by another editor meanwhile: then it is read again before anything is written.
 */
public final class Workspace {
    private final Path file;
    private final Deque<String> undo = new ArrayDeque<>();
    private final Deque<String> redo = new ArrayDeque<>();
    private String text;
    private Assessment assessment;
    private BooleanSupplier stale;
    private int revision = 1;

    private Workspace(Path file, String text, Loading.Loaded loaded) {
        this.file = file;
        this.text = text;
        this.assessment = loaded.assessment();
        this.stale = loaded.stale();
    }

    /** A value to write: text as the builder would type it, empty to remove the key. */
    public record Edit(String path, String text) {}

    /** What came of opening a file. */
    public sealed interface Opening {
        /** Opened. */
        record Opened(Workspace workspace) implements Opening {}

        /** Not usable: all problems. */
        record Refused(List<LocatedProblem> problems) implements Opening {}
    }

    /** What came of an edit. */
    public sealed interface EditResult {
        /** Written to the file. */
        record Taken(Assessment assessment) implements EditResult {}

        /** Nothing was written: all problems. */
        record Refused(List<LocatedProblem> problems) implements EditResult {}
    }

    /**
     * Opens a build file.
     *
     * @throws IOException when the file vanishes while it is read
     */
    public static Opening open(Path file) throws IOException {
        return switch (Loading.first(file)) {
            case Loading.Refused refused -> new Opening.Refused(refused.problems());
            case Loading.Loaded loaded -> new Opening.Opened(new Workspace(file, read(file), loaded));
        };
    }

    /**
     * The file as it stands, number and assessment of one moment.
     *
     * @param revision counts up with every change
     * @param assessment of the file
     */
    public record Standing(int revision, Assessment assessment) {}

    /** The file as it stands. */
    public synchronized Standing standing() {
        return new Standing(revision, assessment);
    }

    /** The assessment of the file as it stands, its stops over time not yet followed. */
    public synchronized Assessment assessment() {
        return assessment;
    }

    /** The text of the file as it stands. */
    public synchronized String text() {
        return text;
    }

    /** Counts up with every change. */
    public synchronized int revision() {
        return revision;
    }

    /** Name of the file without its folder. */
    public String fileName() {
        return String.valueOf(file.getFileName());
    }

    /** Whether a change can be taken back. */
    public synchronized boolean canUndo() {
        return !undo.isEmpty();
    }

    /** Whether a change that was taken back can be made again. */
    public synchronized boolean canRedo() {
        return !redo.isEmpty();
    }

    /**
     * Reads the file again when another editor changed it, or a log that it names.
     *
     * @return problems when what stands there now cannot be used; empty when all is well
     */
    public synchronized List<LocatedProblem> refresh() throws IOException {
        String now = read(file);
        if (now.equals(text) && !stale.getAsBoolean()) {
            return List.of();
        }
        return switch (Loading.first(now, file)) {
            case Loading.Refused refused -> refused.problems();
            case Loading.Loaded loaded -> {
                if (!now.equals(text)) {
                    undo.push(text);
                    redo.clear();
                }
                accept(now, loaded);
                yield List.of();
            }
        };
    }

    /** Makes several edits together: all of them or none. */
    public synchronized EditResult edit(List<Edit> edits) throws IOException {
        List<LocatedProblem> problems = new ArrayList<>();
        String edited = text;
        for (Edit edit : edits) {
            switch (SpanEdit.apply(edited, edit.path(), edit.text())) {
                case EditOutcome.Edited done -> edited = done.text();
                case EditOutcome.Refused refused -> problems.add(refused.problem());
            }
        }
        if (!problems.isEmpty()) {
            return new EditResult.Refused(List.copyOf(problems));
        }
        String before = text;
        EditResult result = replace(edited);
        if (result instanceof EditResult.Taken && !edited.equals(before)) {
            undo.push(before);
            redo.clear();
        }
        return result;
    }

    /** Takes the last change back. */
    public synchronized EditResult undo() throws IOException {
        return step(undo, redo);
    }

    /** Makes a change again that was taken back. */
    public synchronized EditResult redo() throws IOException {
        return step(redo, undo);
    }

    private EditResult step(Deque<String> from, Deque<String> to) throws IOException {
        if (from.isEmpty()) {
            return new EditResult.Taken(assessment);
        }
        String before = text;
        EditResult result = replace(from.peek());
        if (result instanceof EditResult.Taken) {
            from.pop();
            to.push(before);
        }
        return result;
    }

    private EditResult replace(String edited) throws IOException {
        return switch (Loading.first(edited, file)) {
            case Loading.Refused refused -> new EditResult.Refused(refused.problems());
            case Loading.Loaded loaded -> {
                write(edited);
                accept(edited, loaded);
                yield new EditResult.Taken(loaded.assessment());
            }
        };
    }

    /** Reads and assesses the file as it stands once more, for nothing but the practice. */
    public Loading again() {
        return Loading.first(text(), file);
    }

    private void accept(String accepted, Loading.Loaded loaded) {
        text = accepted;
        assessment = loaded.assessment();
        stale = loaded.stale();
        revision++;
    }

    /** Written beside the file and moved over it, so that no half-written file is ever left. */
    private void write(String edited) throws IOException {
        Path target = file.toRealPath();
        Path half = Files.createTempFile(target.getParent(), ".", ".part");
        try {
            Files.writeString(half, edited);
            keepMode(target, half);
            Files.move(half, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(half);
        }
    }

    /** The file moved over another one is a new file to the system: who may read and write it must not change by an edit. */
    private static void keepMode(Path from, Path to) throws IOException {
        if (Files.getFileStore(from).supportsFileAttributeView(PosixFileAttributeView.class)) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    private static String read(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }
}
