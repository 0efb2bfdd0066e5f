package org.brakewright.app.web;

import io.javalin.http.Context;
import org.brakewright.app.report.Json;
import org.brakewright.app.scene.SceneMaker;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;

/** Answers with the bodies of the build file as it stands, in space. */
final class SceneHandler {
    private final Workspace workspace;

    SceneHandler(Workspace workspace) {
        this.workspace = workspace;
    }

    void scene(Context context) {
        String units = context.queryParam("units");
        Show show = new Show(UnitSystem.named(units == null ? "metric" : units));
        Workspace.Standing standing = workspace.standing();
        context.contentType("application/json")
                .result(Json.write(new SceneMaker(show).make(standing.assessment(), standing.revision())));
    }
}
