package org.brakewright.bench;

import java.util.concurrent.TimeUnit;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.Reading;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to read one quantity as a builder types it; a build file holds some hundred. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReaderBench {
    @Param({"7/8 in", "22.2 mm", "610 ± 5 mm"})
    private String text = "";

    /** Returns the reading, so that the work cannot be left out. */
    @Benchmark
    public Reading readALength() {
        return QuantityReader.read(text, Dimension.LENGTH);
    }
}
