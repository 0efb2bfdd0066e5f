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
        description = "Prints the JSON Schema of the build file, or of what check --json or tolerance --json prints.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright schema > build-file.schema.json",
            "  brakewright schema --result",
            "  brakewright schema --tolerance"
        })
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--result", description = "The schema of the results instead.")
    private boolean result;

    @Option(names = "--tolerance", description = "The schema of tolerance runs instead.")
    private boolean tolerance;

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(schema().strip());
        return ExitCode.FINE;
    }

    private String schema() {
        if (tolerance) {
            return ResultSchema.tolerance();
        }
        return result ? ResultSchema.json() : FormatSchema.json();
    }
}
