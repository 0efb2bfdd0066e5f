package org.brakewright.app.web;

import org.brakewright.app.page.PageMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Loading;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.findings.Assess;

/**
 * Goes through a change without making one, so that the JVM has compiled the way before the builder's first click:
 * without it the first changes take several times as long as later ones.
 */
public final class Rehearsal {
    private static final int ROUNDS_BEHIND_THE_PAGE = 60;

    private Rehearsal() {}

    /** Reads, assesses and writes the page of a workspace some times over, for nothing but the practice. */
    public static void run(Workspace workspace, int rounds) {
        PageMaker.Frame frame = new PageMaker.Frame(0, workspace.fileName(), true, false, false);
        for (int round = 0; round < rounds && !Thread.currentThread().isInterrupted(); round++) {
            if (workspace.again() instanceof Loading.Loaded loaded) {
                PageMaker pages = new PageMaker(new Show(UnitSystem.METRIC));
                Json.write(pages.make(loaded.assessment(), frame));
                Json.write(pages.stops(Assess.followed(loaded.assessment()), frame.revision()));
            }
        }
    }

    /** Rehearses behind the page; ends with the process. */
    public static void behindThePage(Workspace workspace) {
        Thread thread = new Thread(() -> run(workspace, ROUNDS_BEHIND_THE_PAGE), "rehearsal");
        thread.setDaemon(true);
        thread.start();
    }
}
