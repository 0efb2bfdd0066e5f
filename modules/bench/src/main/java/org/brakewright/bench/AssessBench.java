package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.app.page.PageMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
import org.brakewright.findings.Assessment;
import org.brakewright.model.Build;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From the text of a build file to an assessment and its page: what the builder waits for after a change. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class AssessBench {
    @Param({"hill-climber", "shop-pickup", "heavy-tourer"})
    public String car = "";

    private String text = "";

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private Build build;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private Assessment assessment;

    /** Reads the example car from the working directory's {@code examples}. */
    @Setup
    public void read() throws IOException {
        text = Files.readString(Path.of("examples", car, "car.yaml"));
        build = ((ReadOutcome.Usable) BuildFile.read(text, Logs.of(car))).build();
        assessment = ((AssessOutcome.Assessed) Assess.assess(build)).assessment();
    }

    /** The numbers alone, all load cases. */
    @Benchmark
    public Analysis analyse() {
        return Analyse.analyse(assessment.resolved());
    }

    /** Numbers, judgements, cures and the weighed ledger. */
    @Benchmark
    public AssessOutcome assess() {
        return Assess.assess(build);
    }

    /** Everything a change on the page sets off but for the network: read, assess, put into words, write JSON. */
    @Benchmark
    public String textToPage() {
        Build read = ((ReadOutcome.Usable) BuildFile.read(text, Logs.of(car))).build();
        Assessment assessed = ((AssessOutcome.Assessed) Assess.first(read)).assessment();
        return Json.write(new PageMaker(new Show(UnitSystem.METRIC))
                .make(assessed, new PageMaker.Frame(1, "car.yaml", false, false, false)));
    }
}
