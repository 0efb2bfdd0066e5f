package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.HeatStates;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The fifteen snubs of UN R13-H on the hill-climber, with standing and driving on, and the hot brakes found again; target 30 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HeatBench {
    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ResolvedBuild build;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ChainCurve curve;

    private @Nullable HardStop hardStop;

    /** Reads the example car from the working directory's {@code examples} and leaves the snubs only. */
    @Setup
    public void read() throws IOException {
        String text = Files.readString(Path.of("examples", "hill-climber", "car.yaml"));
        int descent = text.indexOf("    - name: down from the summit");
        String snubs = text.substring(0, descent) + text.substring(text.indexOf("intent:", descent));
        Assessment assessment = ((AssessOutcome.Assessed)
                        Assess.assess(((ReadOutcome.Usable) BuildFile.read(snubs)).build()))
                .assessment();
        build = assessment.resolved();
        curve = ChainCurve.of(Chain.of(build));
        hardStop = assessment.analysis().hardStop();
    }

    /** One fade run. */
    @Benchmark
    public @Nullable HeatState fifteenSnubs() {
        return HeatStates.of(build, curve, hardStop);
    }
}
