package org.brakewright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import org.brakewright.app.web.Browser;
import org.brakewright.app.web.PageServer;
import org.brakewright.app.web.Rehearsal;
import org.brakewright.app.workspace.Workspace;
import picocli.CommandLine;

/** Serves the page on a build file until the process is ended. */
final class Serving {
    private final CommandLine line;
    private final ServeOptions options;

    Serving(CommandLine line, ServeOptions options) {
        this.line = line;
        this.options = options;
    }

    int serve(Path file, boolean demo) throws IOException, InterruptedException {
        return switch (Workspace.open(file)) {
            case Workspace.Opening.Refused refused -> Refusals.print(line, file, refused.problems());
            case Workspace.Opening.Opened opened -> serve(opened.workspace(), file, demo);
        };
    }

    private int serve(Workspace workspace, Path file, boolean demo) throws InterruptedException {
        try (PageServer server = PageServer.start(workspace, demo, options.port())) {
            line.getOut().println("The workbench is at " + server.address() + " on this machine only.");
            line.getOut().println("It works on " + file.toAbsolutePath() + "; Ctrl+C ends it.");
            line.getOut().flush();
            if (options.opensBrowser() && !Browser.open(server.address())) {
                line.getOut().println("No browser could be opened from here: open the address yourself.");
                line.getOut().flush();
            }
            Rehearsal.behindThePage(workspace);
            server.join();
            return ExitCode.FINE;
        } catch (PageServer.PortTaken taken) {
            line.getErr()
                    .println("Port " + options.port() + " is taken; give another --port, or none for any free one.");
            return ExitCode.UNUSABLE;
        }
    }
}
