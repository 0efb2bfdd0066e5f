package org.brakewright.app.web;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import org.brakewright.app.page.PageMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.buildfile.LocatedProblem;
import org.brakewright.model.Problem;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** Answers the page's requests, one at a time: an answer tells the state that its own change led to. */
final class PageHandlers {
    private static final String NO_REQUEST = "This is not a request of the page.";

    private final Workspace workspace;
    private final boolean demo;

    PageHandlers(Workspace workspace, boolean demo) {
        this.workspace = workspace;
        this.demo = demo;
    }

    /** What the page sends to change values. */
    record EditRequest(
            int revision, @Nullable String units, @Nullable List<Workspace.Edit> edits) {}

    /** What the page gets when something was refused. */
    record Refusal(List<Shown> problems) {
        /** One problem. */
        record Shown(String path, String value, String message, String allowed, int line, int column) {}

        static Refusal of(List<LocatedProblem> problems) {
            return new Refusal(problems.stream().map(Refusal::shown).toList());
        }

        private static Shown shown(LocatedProblem located) {
            Problem problem = located.problem();
            return new Shown(
                    problem.path(),
                    problem.value(),
                    problem.message(),
                    problem.allowed(),
                    located.line(),
                    located.column());
        }
    }

    synchronized void page(Context context) throws IOException {
        List<LocatedProblem> problems = workspace.refresh();
        if (problems.isEmpty()) {
            answer(context, context.queryParam("units"));
        } else {
            refuse(context, HttpStatus.UNPROCESSABLE_CONTENT, problems);
        }
    }

    synchronized void edit(Context context) throws IOException {
        EditRequest request = request(context);
        List<Workspace.Edit> edits = request.edits();
        if (edits == null) {
            throw new BadRequestResponse("edits are missing");
        }
        if (isCurrent(context, request)) {
            answer(context, request, workspace.edit(edits));
        }
    }

    synchronized void undo(Context context) throws IOException {
        EditRequest request = request(context);
        if (isCurrent(context, request)) {
            answer(context, request, workspace.undo());
        }
    }

    synchronized void redo(Context context) throws IOException {
        EditRequest request = request(context);
        if (isCurrent(context, request)) {
            answer(context, request, workspace.redo());
        }
    }

    void unexpected(Exception exception, Context context) {
        if (exception instanceof HttpResponseException expected) {
            context.status(expected.getStatus()).result(String.valueOf(expected.getMessage()));
            return;
        }
        refuse(
                context,
                HttpStatus.INTERNAL_SERVER_ERROR,
                trouble("This should not have happened: " + exception.getMessage()));
    }

    private static EditRequest request(Context context) {
        try {
            EditRequest request = Json.read(context.body(), EditRequest.class);
            if (request == null || !complete(request.edits())) {
                throw new BadRequestResponse(NO_REQUEST);
            }
            return request;
        } catch (JacksonException broken) {
            throw new BadRequestResponse(NO_REQUEST);
        }
    }

    private static boolean complete(@Nullable List<Workspace.@Nullable Edit> edits) {
        return edits == null
                || edits.stream().allMatch(edit -> edit != null && edit.path() != null && edit.text() != null);
    }

    /** Whether the page has seen the newest state; otherwise nothing is changed and it is told so. */
    private boolean isCurrent(Context context, EditRequest request) throws IOException {
        List<LocatedProblem> problems = workspace.refresh();
        if (!problems.isEmpty()) {
            refuse(context, HttpStatus.UNPROCESSABLE_CONTENT, problems);
            return false;
        }
        if (request.revision() != workspace.revision()) {
            refuse(
                    context,
                    HttpStatus.CONFLICT,
                    trouble("The build file was changed elsewhere meanwhile; look at it again."));
            return false;
        }
        return true;
    }

    private void answer(Context context, EditRequest request, Workspace.EditResult result) {
        switch (result) {
            case Workspace.EditResult.Taken taken -> answer(context, request.units());
            case Workspace.EditResult.Refused refused ->
                refuse(context, HttpStatus.UNPROCESSABLE_CONTENT, refused.problems());
        }
    }

    private void answer(Context context, @Nullable String units) {
        Show show = new Show(UnitSystem.named(units == null ? "metric" : units));
        PageMaker.Frame frame = new PageMaker.Frame(
                workspace.revision(), workspace.fileName(), demo, workspace.canUndo(), workspace.canRedo());
        json(context, HttpStatus.OK, new PageMaker(show).make(workspace.assessment(), frame));
    }

    private static List<LocatedProblem> trouble(String message) {
        return List.of(new LocatedProblem(1, 1, new Problem("", "", message, "")));
    }

    private static void refuse(Context context, HttpStatus status, List<LocatedProblem> problems) {
        json(context, status, Refusal.of(problems));
    }

    private static void json(Context context, HttpStatus status, Object body) {
        context.status(status).contentType("application/json").result(Json.write(body));
    }
}
