package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.tolerance.Plan;
import org.brakewright.analysis.tolerance.ToleranceOutcome;
import org.brakewright.analysis.tolerance.Tolerances;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
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

/** A usual tolerance run, 4,096 cars, on one and on two threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class ToleranceBench {
    @Param({"hill-climber", "shop-pickup", "heavy-tourer"})
    public String car = "";

    @Param({"1", "2"})
    public int threads;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private Build build;

    /** Reads the example car from the working directory's {@code examples}. */
    @Setup
    public void read() throws IOException {
        build = ((ReadOutcome.Usable) BuildFile.read(Files.readString(Path.of("examples", car, "car.yaml")), Logs.of(car))).build();
    }

    /** Everything of a run, from drawing points to shares of the variance. */
    @Benchmark
    public ToleranceOutcome run() {
        return Tolerances.run(build, Plan.usual(threads), () -> false);
    }
}
