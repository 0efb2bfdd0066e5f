package org.brakewright.app.web;

import io.javalin.http.Context;
import org.brakewright.app.page.PageMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.app.workspace.Workspace.Standing;
import org.brakewright.findings.Assess;

/** Follows the stops of the build file as it stands, behind the page; other requests go on meanwhile. */
final class StopHandler {
    private final Workspace workspace;

    StopHandler(Workspace workspace) {
        this.workspace = workspace;
    }

    void stops(Context context) {
        String units = context.queryParam("units");
        Show show = new Show(UnitSystem.named(units == null ? "metric" : units));
        Standing standing = workspace.standing();
        context.contentType("application/json")
                .result(Json.write(
                        new PageMaker(show).stops(Assess.followed(standing.assessment()), standing.revision())));
    }
}
