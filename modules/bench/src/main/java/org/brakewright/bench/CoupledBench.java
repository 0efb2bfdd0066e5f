package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
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

/** One solution of pedal, bar, masters, valves and lines at a pedal force; it should stay below 20 microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CoupledBench {
    private static final double PUSH = 400;

    @Param({"hill-climber", "shop-pickup", "heavy-tourer"})
    public String car = "";

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private Chain chain;

    /** Reads the example car from the working directory's {@code examples}. */
    @Setup
    public void read() throws IOException {
        String text = Files.readString(Path.of("examples", car, "car.yaml"));
        AssessOutcome outcome = Assess.assess(((ReadOutcome.Usable) BuildFile.read(text, Logs.of(car))).build());
        chain = Chain.of(((AssessOutcome.Assessed) outcome).assessment().resolved());
    }

    /** The whole car under 400 N. */
    @Benchmark
    public Pushed solve() {
        return chain.atPedalForce(PUSH);
    }
}
