package org.brakewright.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.brakewright.analysis.tolerance.Plan;
import org.brakewright.analysis.tolerance.Tolerance;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.analysis.tolerance.Tolerances;
import org.brakewright.app.report.ToleranceReport;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Loading;
import org.brakewright.model.Build;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Propagates every tolerance and every assumed range of a build file and prints what spreads, and whose doing it is. */
@Command(
        name = "tolerance",
        mixinStandardHelpOptions = true,
        description =
                "Draws some thousand cars within every ± and every assumed range and tells how far effort, travel and "
                        + "balance spread, how often the rear locks first, and which input owns the spread.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright tolerance my-car.yaml",
            "  brakewright tolerance my-car.yaml --samples 16384 --seed 7",
            "  brakewright tolerance my-car.yaml --json > my-car-spread.json"
        })
public final class ToleranceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The build file (YAML).")
    private Path file = Path.of("");

    @Option(
            names = "--samples",
            paramLabel = "N",
            description = "Cars drawn, 64 to 65536, best a power of two; ${DEFAULT-VALUE} unless given.")
    private int samples = Plan.USUAL_SAMPLES;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description =
                    "A whole number that chooses the cars; the same one draws the same cars; ${DEFAULT-VALUE} unless given.")
    private long seed = Plan.USUAL_SEED;

    @Option(names = "--json", description = "Print everything as JSON, numbers in SI.")
    private boolean json;

    @Option(names = "--units", paramLabel = "metric|us", description = "Units of the text report; metric unless given.")
    private UnitSystem units = UnitSystem.METRIC;

    @Override
    public Integer call() {
        if (samples < Plan.LEAST_SAMPLES || samples > Plan.MOST_SAMPLES) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--samples is " + samples + "; it must lie between " + Plan.LEAST_SAMPLES + " and "
                            + Plan.MOST_SAMPLES + ": fewer cars tell nothing, more fill the memory.");
        }
        return switch (Loading.file(file)) {
            case Loading.Refused refused -> Refusals.print(spec.commandLine(), file, refused.problems());
            case Loading.Loaded loaded -> {
                print(loaded.assessment().build());
                yield ExitCode.FINE;
            }
        };
    }

    private void print(Build build) {
        Tolerance tolerance = run(build);
        spec.commandLine()
                .getOut()
                .print(
                        json
                                ? ToleranceReport.json(build.name(), tolerance)
                                : ToleranceReport.text(build.name(), tolerance, new Show(units)));
        spec.commandLine().getOut().flush();
    }

    /** A build that was assessed resolves, and nobody cancels this run. */
    private Tolerance run(Build build) {
        Plan plan = new Plan(samples, seed, Runtime.getRuntime().availableProcessors());
        return switch (Tolerances.run(build, plan, () -> false)) {
            case ToleranceOutcome.Done done -> done.tolerance();
            case ToleranceOutcome.Cancelled cancelled -> throw new IllegalStateException("the run was cancelled");
            case ToleranceOutcome.Unusable unusable -> throw new IllegalStateException("" + unusable.problems());
        };
    }
}
