package org.brakewright.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the workbench on a copy of an example car. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description =
                "Opens the workbench on the demo car in the browser. It works on a copy, so nothing can be spoilt.",
        footerHeading = "%nExamples:%n",
        footer = {"  brakewright demo", "  brakewright demo --car shop-pickup"})
public final class DemoCommand implements Callable<Integer> {
    private static final String LOG = "drive.csv";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--car",
            paramLabel = "NAME",
            description = "hill-climber (unless given), shop-pickup or heavy-tourer.",
            defaultValue = "hill-climber")
    private String car = "hill-climber";

    @Mixin
    private ServeOptions options = new ServeOptions();

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path copy = copy(car);
        if (copy == null) {
            spec.commandLine()
                    .getErr()
                    .println("There is no demo car " + car + "; there are hill-climber, shop-pickup and heavy-tourer.");
            return ExitCode.UNUSABLE;
        }
        return new Serving(spec.commandLine(), options).serve(copy, true);
    }

    /** A copy of an example, with the log that it may name, in a new folder; null when there is no such example. */
    static @Nullable Path copy(String car) throws IOException {
        try (InputStream example = resource(car, "car.yaml");
                InputStream log = resource(car, LOG)) {
            if (example == null) {
                return null;
            }
            Path copy = Files.createTempDirectory("brakewright-demo").resolve(car + ".yaml");
            Files.copy(example, copy);
            if (log != null) {
                Files.copy(log, copy.resolveSibling(LOG));
            }
            return copy;
        }
    }

    private static @Nullable InputStream resource(String car, String file) {
        return DemoCommand.class.getResourceAsStream("/org/brakewright/examples/" + car + "/" + file);
    }
}
