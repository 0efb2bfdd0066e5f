package org.brakewright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.app.page.SpreadMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;

/** Answers with the spread of the build file as it stands, when its run has ended; other requests go on meanwhile. */
final class SpreadHandler {
    private final Spreads spreads;

    SpreadHandler(Workspace workspace) {
        this.spreads = new Spreads(workspace);
    }

    void spread(Context context) {
        String units = context.queryParam("units");
        Show show = new Show(UnitSystem.named(units == null ? "metric" : units));
        Spreads.Run run = spreads.current();
        context.future(() -> run.outcome().thenAccept(outcome -> answer(context, outcome, run.revision(), show)));
    }

    private static void answer(Context context, ToleranceOutcome outcome, int revision, Show show) {
        switch (outcome) {
            case ToleranceOutcome.Done done ->
                context.contentType("application/json")
                        .result(Json.write(new SpreadMaker(show).make(done.tolerance(), revision)));
            case ToleranceOutcome.Cancelled cancelled -> context.status(HttpStatus.NO_CONTENT);
            case ToleranceOutcome.Unusable unusable -> throw new IllegalStateException("" + unusable.problems());
        }
    }
}
