package org.brakewright.app.command;

import picocli.CommandLine.Option;

/** Options of the commands that serve the page. */
final class ServeOptions {
    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port on this machine; any free one unless given.",
            defaultValue = "0")
    private int port;

    @Option(names = "--no-browser", description = "Print the address and do not open a browser.")
    private boolean noBrowser;

    int port() {
        return port;
    }

    boolean opensBrowser() {
        return !noBrowser;
    }
}
