package org.brakewright.app.web;

import java.util.concurrent.CompletableFuture;
import org.brakewright.analysis.tolerance.Plan;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.analysis.tolerance.Tolerances;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.app.workspace.Workspace.Standing;
import org.jspecify.annotations.Nullable;

/**
 * Tolerance runs of a workspace, away from the requests. One run a revision of the build file, kept until the next; a run
 * ends by itself as soon as the file moves on. One core stays free for the builder's next change.
 */
final class Spreads {
    private static final int THREADS = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);

    private final Workspace workspace;
    private @Nullable Run latest;

    Spreads(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * A run that goes on or has ended.
     *
     * @param revision of the build file
     * @param outcome of the run, when it has ended
     */
    record Run(int revision, CompletableFuture<ToleranceOutcome> outcome) {}

    /** The run of the build file as it stands, begun when there is none yet. */
    synchronized Run current() {
        Standing standing = workspace.standing();
        Run known = latest;
        if (known != null && known.revision() == standing.revision()) {
            return known;
        }
        Run begun = new Run(
                standing.revision(), CompletableFuture.supplyAsync(() -> run(standing), Spreads::behindThePage));
        latest = begun;
        return begun;
    }

    private ToleranceOutcome run(Standing standing) {
        return Tolerances.run(
                standing.assessment().build(), Plan.usual(THREADS), () -> workspace.revision() != standing.revision());
    }

    private static void behindThePage(Runnable run) {
        Thread thread = new Thread(run, "spread");
        thread.setDaemon(true);
        thread.start();
    }
}
