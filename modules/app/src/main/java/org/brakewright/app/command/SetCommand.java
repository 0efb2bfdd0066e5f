package org.brakewright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.words.Verdict;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.app.workspace.Workspace.Edit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes one value of a build file, comments and layout kept. */
@Command(
        name = "set",
        mixinStandardHelpOptions = true,
        description = "Changes one value of a build file; comments and layout stay. Prints the verdict after it.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright set my-car.yaml apply.front_master.bore '3/4 in (part sheet)'",
            "  brakewright set my-car.yaml car.load_cases[0].cg_height '480 +/- 20 mm (measured)'",
            "  brakewright set my-car.yaml front.pad_friction ''    removes it, so that it is assumed"
        })
public final class SetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The build file (YAML).")
    private Path file = Path.of("");

    @Parameters(paramLabel = "KEY", description = "Key path, for example pedal.ratio.")
    private String path = "";

    @Parameters(paramLabel = "VALUE", description = "The value as you would type it; empty removes the key.")
    private String text = "";

    @Override
    public Integer call() throws IOException {
        return switch (Workspace.open(file)) {
            case Workspace.Opening.Refused refused -> Refusals.print(spec.commandLine(), file, refused.problems());
            case Workspace.Opening.Opened opened -> edit(opened.workspace());
        };
    }

    private int edit(Workspace workspace) throws IOException {
        return switch (workspace.edit(List.of(new Edit(path, text)))) {
            case Workspace.EditResult.Refused refused -> Refusals.print(spec.commandLine(), file, refused.problems());
            case Workspace.EditResult.Taken taken -> {
                Verdict verdict = Verdict.of(taken.assessment(), new FindingWords(new Show(UnitSystem.METRIC)));
                spec.commandLine().getOut().println(FindingWords.word(verdict.state()) + ". " + verdict.sentence());
                yield ExitCode.of(taken.assessment());
            }
        };
    }
}
