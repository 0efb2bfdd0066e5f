package org.brakewright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Loading;
import org.brakewright.drawing.page.Paper;
import org.brakewright.findings.Assessment;
import org.brakewright.sheets.Issue;
import org.brakewright.sheets.Sheet;
import org.brakewright.sheets.SheetFiles;
import org.brakewright.sheets.Sheets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws every sheet that a build file allows. */
@Command(
        name = "sheets",
        mixinStandardHelpOptions = true,
        description =
                "Draws the sheets for the bench at true scale: templates, cutting and setting sheets, each as PDF, SVG "
                        + "and DXF. A drawing that a stop finding forbids to cut is stamped so.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  brakewright sheets my-car.yaml --out sheets",
            "  brakewright sheets my-car.yaml --out sheets --paper letter --owner \"R. Miller\"",
            "",
            "Print at 100 %% and lay a ruler on the check bars before anything is cut."
        })
public final class SheetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The build file (YAML).")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder to write into; made when missing.")
    private Path out = Path.of("");

    @Option(
            names = "--paper",
            paramLabel = "a4|letter|a3|tabloid",
            split = ",",
            description = "Paper of the PDF files; a4 and letter unless given.")
    private List<Paper> papers = List.of(Paper.A4, Paper.LETTER);

    @Option(names = "--owner", paramLabel = "NAME", description = "Owner for the title block; left open unless given.")
    private String owner = "";

    @Option(names = "--by", paramLabel = "NAME", description = "Who made the sheets; left open unless given.")
    private String creator = "";

    @Option(names = "--date", paramLabel = "DATE", description = "Date of issue; today unless given.")
    private String date = LocalDate.now(ZoneId.systemDefault()).toString();

    @Option(names = "--units", paramLabel = "metric|us", description = "Units in sentences; metric unless given.")
    private UnitSystem units = UnitSystem.METRIC;

    @Override
    public Integer call() {
        return switch (Loading.forDrawings(file)) {
            case Loading.Refused refused -> Refusals.print(spec.commandLine(), file, refused.problems());
            case Loading.Loaded loaded -> sheets(loaded.assessment());
        };
    }

    private int sheets(Assessment assessment) {
        List<Sheet> sheets = Sheets.of(assessment, new Issue(owner, creator, date), new FindingWords(new Show(units)));
        try {
            write(SheetFiles.of(sheets, papers));
        } catch (IOException e) {
            spec.commandLine().getErr().println(out + " cannot be written to: " + e.getMessage() + ".");
            return ExitCode.UNUSABLE;
        }
        tell(sheets);
        return sheets.stream().anyMatch(Sheet::forbidden) ? ExitCode.STOP : ExitCode.FINE;
    }

    private void write(Map<String, byte[]> files) throws IOException {
        Files.createDirectories(out);
        for (Map.Entry<String, byte[]> entry : files.entrySet()) {
            Files.write(out.resolve(entry.getKey()), entry.getValue());
        }
    }

    private void tell(List<Sheet> sheets) {
        PrintWriter print = spec.commandLine().getOut();
        for (Sheet sheet : sheets) {
            String stamp = sheet.drawing().stamp();
            print.println(sheet.key() + ": " + sheet.drawing().title().title() + (stamp == null ? "" : "\n  " + stamp));
        }
        print.println(
                sheets.size() + " sheets in " + out + ". Print at 100 % and measure the check bars before cutting.");
        print.flush();
    }
}
