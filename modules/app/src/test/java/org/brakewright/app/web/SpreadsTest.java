package org.brakewright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.app.Cars;
import org.brakewright.app.workspace.Workspace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One run a state of the file, kept until the next. */
class SpreadsTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aStateIsRunOnceAndTheNextAnew() throws IOException {
        Path file = Cars.copy(folder, Cars.text("hill-climber"));
        if (!(Workspace.open(file) instanceof Workspace.Opening.Opened opened)) {
            throw new AssertionError("not usable: " + file);
        }
        Spreads spreads = new Spreads(opened.workspace());
        Spreads.Run first = spreads.current();
        assertThat(spreads.current()).isSameAs(first);
        opened.workspace().edit(List.of(new Workspace.Edit("car.grip", "0.8")));
        Spreads.Run next = spreads.current();
        assertThat(next.revision()).isEqualTo(first.revision() + 1);
        assertThat(next.outcome().join()).isInstanceOf(ToleranceOutcome.Done.class);
        // The first one may have ended before the change; if not, it ended with it and without an answer.
        assertThat(first.outcome().join()).isNotInstanceOf(ToleranceOutcome.Unusable.class);
    }
}
