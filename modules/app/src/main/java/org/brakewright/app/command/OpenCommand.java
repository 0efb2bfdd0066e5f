package org.brakewright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the workbench on a build file. */
@Command(
        name = "open",
        mixinStandardHelpOptions = true,
        description =
                "Opens the workbench on a build file in the browser. Every change is written to the file at once.",
        footerHeading = "%nExamples:%n",
        footer = {"  brakewright open my-car.yaml", "  brakewright open my-car.yaml --port 8123 --no-browser"})
public final class OpenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The build file (YAML).")
    private Path file = Path.of("");

    @Mixin
    private ServeOptions options = new ServeOptions();

    @Override
    public Integer call() throws IOException, InterruptedException {
        return new Serving(spec.commandLine(), options).serve(file, false);
    }
}
