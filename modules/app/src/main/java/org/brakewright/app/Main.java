package org.brakewright.app;

import static java.util.Objects.requireNonNull;

import java.io.PrintWriter;
import org.brakewright.app.command.CheckCommand;
import org.brakewright.app.command.DemoCommand;
import org.brakewright.app.command.ExitCode;
import org.brakewright.app.command.OpenCommand;
import org.brakewright.app.command.SchemaCommand;
import org.brakewright.app.command.SetCommand;
import org.brakewright.app.command.SheetsCommand;
import org.brakewright.app.command.ToleranceCommand;
import org.brakewright.app.command.WarmCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
        name = "brakewright",
        mixinStandardHelpOptions = true,
        version = "Brakewright 0.1.0",
        description = "Tells, before the metal is cut, whether a one-off car will stop: from the foot to the tyre.",
        subcommands = {
            CheckCommand.class,
            ToleranceCommand.class,
            SheetsCommand.class,
            OpenCommand.class,
            DemoCommand.class,
            SetCommand.class,
            SchemaCommand.class,
            WarmCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright demo                     the workbench on the demo car, in the browser",
            "  brakewright check my-car.yaml        verdict, findings and a table",
            "  brakewright check my-car.yaml --json everything with SI numbers",
            "  brakewright tolerance my-car.yaml    what every ± and assumption does together",
            "  brakewright sheets my-car.yaml --out sheets   true-scale drawings and cutting sheets",
            "  brakewright open my-car.yaml         the workbench on your car",
            "",
            "Exit codes: 0 nothing forbids it, 1 a stop was found, 2 the input cannot be used."
        })
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    /** Runs the command line on the process's own output and returns its exit code. */
    public static int run(String... arguments) {
        return line().execute(arguments);
    }

    /** Runs the command line, printing to other places than the process's own output. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return line().setOut(out).setErr(err).execute(arguments);
    }

    private static CommandLine line() {
        CommandLine line = new CommandLine(new Main())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((exception, command, parsed) -> unexpected(exception, command));
        // a value may begin with a minus sign
        requireNonNull(line.getSubcommands().get("set")).setUnmatchedOptionsArePositionalParams(true);
        return line;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int unexpected(Exception exception, CommandLine line) {
        PrintWriter err = line.getErr();
        err.println("This should not have happened, and it is Brakewright's fault: " + exception.getMessage() + ".");
        err.println("Nothing was changed. Set BRAKEWRIGHT_JAVA_OPTS=-Dbrakewright.trace=true to see where.");
        if (Boolean.getBoolean("brakewright.trace")) {
            exception.printStackTrace(err);
        }
        return ExitCode.UNUSABLE;
    }
}
