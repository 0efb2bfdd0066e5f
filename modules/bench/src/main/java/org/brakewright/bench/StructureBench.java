package org.brakewright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.brakewright.kernel.structure.Load;
import org.brakewright.kernel.structure.LoadCase;
import org.brakewright.kernel.structure.Shell;
import org.brakewright.kernel.structure.Solve;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.StructureOutcome;
import org.brakewright.kernel.structure.Support;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.kernel.structure.shell.Sheet;
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

/** A clamped square plate of 20,000 unknowns, assembled and solved; target 1 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StructureBench {
    /** Nodes along a side inside the clamped rim: 58 x 58 x 6 is 20,184. */
    private static final int INSIDE = 58;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private StructureModel plate;

    @SuppressWarnings("NullAway.Init") // set up before any benchmark
    private LoadCase push;

    /** Builds the plate, a metre square of 2 mm steel. */
    @Setup
    public void build() {
        int side = INSIDE + 2;
        double step = 1.0 / (side - 1);
        StructureModel.Builder model = StructureModel.builder();
        int[][] nodes = new int[side][side];
        for (int i = 0; i < side; i++) {
            for (int j = 0; j < side; j++) {
                nodes[i][j] = model.node(i * step, j * step, 0);
                if (i == 0 || j == 0 || i == side - 1 || j == side - 1) {
                    model.support(new Support(nodes[i][j], Support.CLAMP));
                }
            }
        }
        Sheet sheet = new Sheet(2e-3, 210e9, 0.3);
        for (int i = 0; i + 1 < side; i++) {
            for (int j = 0; j + 1 < side; j++) {
                model.add(new Shell("plate", nodes[i][j], nodes[i + 1][j], nodes[i + 1][j + 1], sheet));
                model.add(new Shell("plate", nodes[i][j], nodes[i + 1][j + 1], nodes[i][j + 1], sheet));
            }
        }
        plate = model.build();
        push = LoadCase.of(
                "push", new Load.OnNode(nodes[side / 2][side / 2], Wrench.ofForce(new Vector3(0, 0, -500))));
    }

    /** Assembled and solved. */
    @Benchmark
    public StructureOutcome solve() {
        return Solve.solve(plate, List.of(push));
    }
}
