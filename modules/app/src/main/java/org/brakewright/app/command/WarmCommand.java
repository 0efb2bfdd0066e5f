package org.brakewright.app.command;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.brakewright.app.report.JsonReport;
import org.brakewright.app.report.TextReport;
import org.brakewright.app.web.PageServer;
import org.brakewright.app.web.Rehearsal;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Runs what a builder runs, once, so that the launcher can train its start-up cache. */
@Command(name = "warm", hidden = true, description = "Trains the start-up cache.")
public final class WarmCommand implements Callable<Integer> {
    private static final int ROUNDS = 100;

    @Parameters(paramLabel = "FILE")
    private Path file = Path.of("");

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (!(Workspace.open(file) instanceof Workspace.Opening.Opened opened)) {
            return ExitCode.UNUSABLE;
        }
        for (UnitSystem system : UnitSystem.values()) {
            new TextReport(new Show(system), Colours.forTerminal())
                    .write(opened.workspace().assessment());
        }
        JsonReport.write(opened.workspace().assessment());
        try (PageServer server = PageServer.start(opened.workspace(), true, 0);
                HttpClient client = HttpClient.newHttpClient()) {
            for (String path : new String[] {"/", "/api/page?units=metric", "/api/page?units=us"}) {
                client.send(
                        HttpRequest.newBuilder(URI.create(server.address() + path.substring(1)))
                                .build(),
                        BodyHandlers.ofString());
            }
            Rehearsal.run(opened.workspace(), ROUNDS);
        }
        return ExitCode.FINE;
    }
}
