package org.brakewright.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
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
        try (InputStream example =
                DemoCommand.class.getResourceAsStream("/org/brakewright/examples/" + car + "/car.yaml")) {
            if (example == null) {
                spec.commandLine()
                        .getErr()
                        .println("There is no demo car " + car
                                + "; there are hill-climber, shop-pickup and heavy-tourer.");
                return ExitCode.UNUSABLE;
            }
            Path copy = Files.createTempDirectory("brakewright-demo").resolve(car + ".yaml");
            Files.copy(example, copy);
            return new Serving(spec.commandLine(), options).serve(copy, true);
        }
    }
}
