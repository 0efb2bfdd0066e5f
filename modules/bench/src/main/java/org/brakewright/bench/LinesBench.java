package org.brakewright.bench;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesStates;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.ReadOutcome;
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

/** Lines of 60 bends and more: the hill-climber's, each run beside itself until there are so many; target 50 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LinesBench {
    private static final int BENDS = 60;
    private static final int TIMES = 4;
    private static final LinesStates.Highest HIGHEST = new LinesStates.Highest(60e5, 60e5, 30e5);

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private ResolvedBuild build;

    /** Reads the example car from the working directory's {@code examples} and lays its tubes again. */
    @Setup
    public void read() throws IOException {
        String text = Files.readString(Path.of("examples", "hill-climber", "car.yaml"));
        int tubes = text.indexOf("  tubes:\n") + "  tubes:\n".length();
        int hoses = text.indexOf("  hoses:\n", tubes);
        String told = text.substring(tubes, hoses);
        StringBuilder laid = new StringBuilder(text.substring(0, tubes));
        for (int again = 0; again < TIMES; again++) {
            laid.append(told.replaceAll("(?m)^    - name: (.*)$", "    - name: $1 " + again));
        }
        laid.append(text.substring(hoses));
        var usable = (ReadOutcome.Usable) BuildFile.read(laid.toString());
        build = ((Resolution.Resolved) Resolve.resolve(usable.build())).build();
        int bends = requireNonNull(LinesStates.of(build, HIGHEST)).tubes().stream()
                .mapToInt(tube -> tube.bends().size())
                .sum();
        if (bends < BENDS) {
            throw new IllegalStateException("only " + bends + " bends");
        }
    }

    /** Bend tables, cuts, joints, clearances, air, bleeding. */
    @Benchmark
    public @Nullable LinesState lines() {
        return LinesStates.of(build, HIGHEST);
    }
}
