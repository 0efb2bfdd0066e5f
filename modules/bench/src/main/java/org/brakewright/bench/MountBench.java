package org.brakewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountStates;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.model.Build;
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

/** The hill-climber's mount after an edit of its panel: resolved, meshed, refined, solved with all variants; target 300 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MountBench {
    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private Build build;

    private int edits;

    /** Reads the example car from the working directory's {@code examples}. */
    @Setup
    public void read() throws IOException {
        String text = Files.readString(Path.of("examples", "hill-climber", "car.yaml"));
        build = ((ReadOutcome.Usable) BuildFile.read(text)).build();
    }

    /** An edit; the thickness differs each time, so that nothing is known from before. */
    @Benchmark
    public @Nullable MountState anotherPanel() {
        edits++;
        double thickness = 1.2e-3 + 1e-9 * edits;
        Resolution resolved = Resolve.resolve(build, Map.of("mount.panel.thickness", thickness));
        return MountStates.of(((Resolution.Resolved) resolved).build());
    }
}
