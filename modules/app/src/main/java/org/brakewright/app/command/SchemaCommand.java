package org.brakewright.app.command;

import java.util.concurrent.Callable;
import org.brakewright.app.report.ResultSchema;
import org.brakewright.buildfile.FormatSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the published schemas. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = "Prints the JSON Schema of the build file, or of what check --json prints.",
        footerHeading = "%nExamples:%n",
        footer = {"  brakewright schema > build-file.schema.json", "  brakewright schema --result"})
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--result", description = "The schema of the results instead.")
    private boolean result;

    @Override
    public Integer call() {
        spec.commandLine().getOut().println((result ? ResultSchema.json() : FormatSchema.json()).strip());
        return ExitCode.FINE;
    }
}
