package org.brakewright.app.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Objects;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.app.Cars;
import org.brakewright.app.workspace.Workspace.Edit;
import org.brakewright.app.workspace.Workspace.EditResult;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkspaceTest {
    private static final String BORE = "bore: 5/8 in (part sheet)";
    private static final Edit SMALLER = new Edit("apply.rear_master.bore", "0.5 in");
    private static final Edit LONGER = new Edit("pedal.free_play", "4 mm (measured)");
    private static final Edit BAD = new Edit("pedal.travel_to_stop", "135 kg");

    @TempDir
    private Path folder = Path.of("");

    private String before = "";
    private Path file = Path.of("");

    @BeforeEach
    void copy() {
        before = Cars.text("hill-climber");
        file = Cars.copy(folder, before);
    }

    @Test
    void anEditIsWrittenAtOnceAndOnlyThere() throws IOException {
        Workspace workspace = open(file);
        assertThat(workspace.edit(List.of(SMALLER))).isInstanceOf(EditResult.Taken.class);
        assertThat(file).hasContent(Cars.replaced(before, BORE, "bore: 0.5 in"));
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void theAssessmentIsThatOfTheNewText() throws IOException {
        Workspace workspace = open(file);
        workspace.edit(List.of(SMALLER, LONGER));
        assertThat(workspace.assessment().headline())
                .isEqualTo(Cars.assessed(Cars.read(file)).headline());
        assertThat(workspace.assessment().headline())
                .isNotEqualTo(Cars.assessed(before).headline());
    }

    @Test
    void undoAndRedoGoThroughTheSameTexts() throws IOException {
        Workspace workspace = open(file);
        assertThat(workspace.canUndo()).isFalse();
        workspace.edit(List.of(SMALLER));
        String first = Cars.read(file);
        workspace.edit(List.of(LONGER));
        String second = Cars.read(file);
        workspace.undo();
        assertThat(file).hasContent(first);
        workspace.undo();
        assertThat(file).hasContent(before);
        assertThat(workspace.canUndo()).isFalse();
        assertThat(workspace.assessment().headline())
                .isEqualTo(Cars.assessed(before).headline());
        workspace.redo();
        workspace.redo();
        assertThat(file).hasContent(second);
        assertThat(workspace.canRedo()).isFalse();
    }

    @Test
    void aNewEditForgetsWhatWasTakenBack() throws IOException {
        Workspace workspace = open(file);
        workspace.edit(List.of(SMALLER));
        workspace.undo();
        workspace.edit(List.of(LONGER));
        assertThat(workspace.canRedo()).isFalse();
        workspace.undo();
        assertThat(file).hasContent(before);
    }

    @Test
    void undoWithNothingToUndoChangesNothing() throws IOException {
        Workspace workspace = open(file);
        assertThat(workspace.undo()).isInstanceOf(EditResult.Taken.class);
        assertThat(workspace.redo()).isInstanceOf(EditResult.Taken.class);
        assertThat(workspace.revision()).isEqualTo(1);
        assertThat(file).hasContent(before);
    }

    @Test
    void severalEditsAreMadeTogetherOrNotAtAll() throws IOException {
        Workspace workspace = open(file);
        assertThat(workspace.edit(List.of(SMALLER, BAD)))
                .isInstanceOfSatisfying(
                        EditResult.Refused.class,
                        refused -> assertThat(refused.problems())
                                .singleElement()
                                .satisfies(problem ->
                                        assertThat(problem.problem().path()).isEqualTo("pedal.travel_to_stop")));
        assertThat(file).hasContent(before);
        assertThat(workspace.revision()).isEqualTo(1);
        assertThat(workspace.canUndo()).isFalse();
        assertThat(workspace.edit(List.of(SMALLER, LONGER))).isInstanceOf(EditResult.Taken.class);
        workspace.undo();
        assertThat(file).hasContent(before);
    }

    @Test
    void allProblemsOfAnEditAreTold() throws IOException {
        assertThat(open(file).edit(List.of(BAD, new Edit("pedal.free_play", "soft"), new Edit("a b", "1"))))
                .isInstanceOfSatisfying(
                        EditResult.Refused.class,
                        refused -> assertThat(refused.problems()).isNotEmpty());
    }

    @Test
    void theRevisionCountsEveryChange() throws IOException {
        Workspace workspace = open(file);
        workspace.edit(List.of(SMALLER));
        workspace.undo();
        workspace.redo();
        Files.writeString(file, before);
        workspace.refresh();
        assertThat(workspace.revision()).isEqualTo(5);
        workspace.refresh();
        workspace.edit(List.of(BAD));
        assertThat(workspace.revision()).isEqualTo(5);
    }

    @Test
    void aChangeByAnotherEditorIsReadAndCanBeTakenBack() throws IOException {
        Workspace workspace = open(file);
        Files.writeString(file, Cars.replaced(before, BORE, "bore: 7/8 in"));
        assertThat(workspace.refresh()).isEmpty();
        assertThat(workspace.assessment().headline())
                .isEqualTo(Cars.assessed(Cars.read(file)).headline());
        assertThat(workspace.canUndo()).isTrue();
        workspace.undo();
        assertThat(file).hasContent(before);
    }

    @Test
    void aFileThatBecameUnusableIsToldAndLeftAlone() throws IOException {
        Workspace workspace = open(file);
        String broken = Cars.replaced(before, BORE, "bore: [");
        Files.writeString(file, broken);
        assertThat(workspace.refresh()).isNotEmpty();
        assertThat(file).hasContent(broken);
        Files.writeString(file, before);
        assertThat(workspace.refresh()).isEmpty();
        assertThat(workspace.revision()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-r--r--", "rw-rw-r--", "rw-------"})
    void whoMayReadAndWriteStays(String mode) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
        open(file).edit(List.of(SMALLER));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo(mode);
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        Workspace workspace = open(link);
        workspace.edit(List.of(SMALLER));
        assertThat(link).isSymbolicLink();
        assertThat(file).isRegularFile().hasContent(Cars.replaced(before, BORE, "bore: 0.5 in"));
        assertThat(workspace.fileName()).isEqualTo("link.yaml");
    }

    /** A Windows editor's mark and line ends stay what they are. */
    @Test
    void theMarkAndLineEndsOfAnEditorStay() throws IOException {
        String windows = "\uFEFF" + before.replace("\n", "\r\n");
        Files.writeString(file, windows);
        open(file).edit(List.of(SMALLER));
        assertThat(Files.readString(file)).isEqualTo(Cars.replaced(windows, BORE, "bore: 0.5 in"));
    }

    /** A log written anew by the logger is read again, and there is nothing to take back. */
    @Test
    void aLogThatChangedIsReadAgain() throws IOException {
        Path tourer = Cars.copy(folder, Cars.text("heavy-tourer"));
        Path log = folder.resolve("drive.csv");
        Workspace workspace = open(tourer);
        double before = energy(workspace);
        assertThat(workspace.refresh()).isEmpty();
        assertThat(workspace.revision()).isEqualTo(1);
        Files.writeString(log, "time [s],speed [km/h]\n0,90\n5,0\n");
        assertThat(workspace.refresh()).isEmpty();
        assertThat(workspace.revision()).isEqualTo(2);
        assertThat(workspace.canUndo()).isFalse();
        assertThat(energy(workspace)).isLessThan(before);
        Files.delete(log);
        assertThat(workspace.refresh())
                .singleElement()
                .satisfies(fault -> assertThat(fault.problem().message()).contains("no file `drive.csv`"));
    }

    private static double energy(Workspace workspace) {
        HeatState heat =
                Objects.requireNonNull(workspace.assessment().analysis().heat());
        return heat.schedules().getFirst().energyJ();
    }

    private static Workspace open(Path file) throws IOException {
        return switch (Workspace.open(file)) {
            case Workspace.Opening.Opened opened -> opened.workspace();
            case Workspace.Opening.Refused refused ->
                throw new AssertionError(refused.problems().toString());
        };
    }
}
