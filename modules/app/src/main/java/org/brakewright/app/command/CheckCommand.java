package org.brakewright.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.brakewright.app.report.JsonReport;
import org.brakewright.app.report.TextReport;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Loading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Assesses a build file and prints what was found. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Assesses a build file: the verdict first, then the findings, then a table.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright check my-car.yaml",
            "  brakewright check my-car.yaml --units us",
            "  brakewright check my-car.yaml --json > my-car.json"
        })
public final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The build file (YAML).")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Print everything as JSON, numbers in SI.")
    private boolean json;

    @Option(names = "--units", paramLabel = "metric|us", description = "Units of the text report; metric unless given.")
    private UnitSystem units = UnitSystem.METRIC;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        return switch (Loading.file(file)) {
            case Loading.Refused refused -> Refusals.print(spec.commandLine(), file, refused.problems());
            case Loading.Loaded loaded -> {
                out.print(
                        json
                                ? JsonReport.write(loaded.assessment())
                                : new TextReport(new Show(units), Colours.forTerminal()).write(loaded.assessment()));
                out.flush();
                yield ExitCode.of(loaded.assessment());
            }
        };
    }
}
