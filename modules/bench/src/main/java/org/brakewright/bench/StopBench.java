package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.stop.Stop;
import org.brakewright.analysis.stop.StopKind;
import org.brakewright.analysis.stop.Stops;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;
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

/** One whole stop over time in the heaviest load case, on slipping and locking wheels; target 10 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class StopBench {
    @Param({"hill-climber", "shop-pickup", "heavy-tourer"})
    public String car = "";

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ResolvedBuild build;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ChainCurve curve;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ChainCurve rearOut;

    private double gentleForce;

    /** Reads the example car from the working directory's {@code examples}. */
    @Setup
    public void read() throws IOException {
        String written = Files.readString(Path.of("examples", car, "car.yaml"));
        String text = written.contains("\nstops:") ? written : written + "\nstops:\n  speed: 90 km/h\n";
        ReadOutcome.Usable read = (ReadOutcome.Usable) BuildFile.read(text, Logs.of(car));
        build = ((Resolution.Resolved) Resolve.resolve(read.build())).build();
        Chain chain = Chain.of(build);
        curve = ChainCurve.of(chain);
        rearOut = ChainCurve.of(chain.failed(AxleEnd.REAR));
        gentleForce = curve.pedalForce(0.5 * 9.81 * build.car().heaviest().mass()).orElseThrow();
    }

    /** Half a g on wheels that go on turning, which takes longest to follow. */
    @Benchmark
    public Stop gentle() {
        return Stops.one(build, curve, StopKind.HARD, gentleForce);
    }

    /** The panic push, wheels locked or not. */
    @Benchmark
    public Stop panic() {
        return Stops.one(build, curve, StopKind.PANIC, build.aims().panicPush());
    }

    /** The most effort that rules grant with the rear circuit open: the whole stop on wheels that slip. */
    @Benchmark
    public Stop rearOut() {
        return Stops.one(build, rearOut, StopKind.REAR_OUT, StopsFrom.MOST_FORCE);
    }
}
