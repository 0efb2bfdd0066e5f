package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.lines.TubeState.BendRow;
import org.brakewright.analysis.lines.TubeState.Clips;
import org.brakewright.analysis.lines.TubeState.Gap;
import org.brakewright.analysis.lines.TubeState.ShortStraight;
import org.brakewright.analysis.lines.TubeState.Strength;
import org.brakewright.kernel.tubing.Bend;
import org.brakewright.kernel.tubing.BendTable;
import org.brakewright.kernel.tubing.BenderTool;
import org.brakewright.kernel.tubing.CentreLine;
import org.brakewright.kernel.tubing.EndAllowance;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Bender;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Tube;

/** Bends, holds and keeps clear one tube after the other. */
public final class TubeStates {
    /** Rounding of straights, m. */
    private static final double SLIP = 1e-9;

    private final ResolvedLines lines;

    TubeStates(ResolvedLines lines) {
        this.lines = lines;
    }

    /** A tube in its circuit, whose highest pressure is told (Pa). */
    TubeState state(Tube tube, Circuit circuit, double highest) {
        BendTable table = BendTable.of(Places.route(tube));
        CentreLine middle = CentreLine.of(Places.route(tube));
        return new TubeState(
                tube.name(),
                circuit,
                tube.material().name().toLowerCase(Locale.ROOT),
                tube.outsideDiameter(),
                tube.wall(),
                table.developedLength(),
                cutLength(table, lines.flareAllowance()),
                rows(table, tube.angleKept()),
                table.tail(),
                shortStraights(table),
                strength(tube, table.developedLength(), highest),
                tube.clipped() ? clips(tube.clips(), table.developedLength()) : null,
                gaps(tube, middle),
                tube.points(),
                middle.points().stream().map(Places::spot).toList());
    }

    /** Length (m) to cut with a flare at both ends that takes up so much (m). */
    public static double cutLength(BendTable table, double flare) {
        EndAllowance end = new EndAllowance(flare, 0);
        return EndAllowance.cutLength(table, end, end);
    }

    private List<BendRow> rows(BendTable table, double kept) {
        List<BendRow> rows = new ArrayList<>();
        double mark = lines.flareAllowance();
        for (Bend bend : table.bends()) {
            mark += bend.straight();
            double angle = bend.arc().angle();
            rows.add(new BendRow(
                    bend.straight(),
                    mark,
                    bend.rotation(),
                    angle,
                    angle / kept,
                    bend.arc().radius()));
            mark += bend.arc().arc();
        }
        return List.copyOf(rows);
    }

    private List<ShortStraight> shortStraights(BendTable table) {
        Bender bender = lines.bender();
        List<Double> straights = table.straights();
        List<Double> spare = new BenderTool(bender.firstGrip(), bender.between(), bender.lastGrip()).spare(table);
        List<ShortStraight> lacking = new ArrayList<>();
        for (int i = 0; i < spare.size(); i++) {
            double have = straights.get(i);
            boolean end = i == 0 || i == spare.size() - 1;
            double forTool = have - spare.get(i);
            double forNut = end ? lines.nutStraight() : 0;
            double need = Math.max(forTool, forNut);
            if (have < need - SLIP) {
                lacking.add(new ShortStraight(i + 1, have, need, forNut >= forTool));
            }
        }
        return List.copyOf(lacking);
    }

    private static Strength strength(Tube tube, double length, double highest) {
        TubeMetal metal = TubeMetal.of(tube.material());
        var section = new org.brakewright.kernel.hydraulics.Tube(tube.outsideDiameter(), tube.wall());
        return new Strength(
                highest,
                section.barlowOutside(metal.tensile()),
                section.pressureForHoop(metal.yield()),
                section.swell(length, highest, metal.youngsModulus(), metal.poissonRatio()));
    }

    private static Clips clips(List<Double> clips, double length) {
        double longest = 0;
        double before = 0;
        for (double clip : DoubleStream.concat(clips.stream().mapToDouble(Double::doubleValue), DoubleStream.of(length))
                .toArray()) {
            longest = Math.max(longest, clip - before);
            before = clip;
        }
        return new Clips(clips, longest);
    }

    private List<Gap> gaps(Tube tube, CentreLine middle) {
        return lines.obstacles().stream()
                .map(obstacle -> gap(tube, middle, obstacle))
                .sorted(Comparator.comparingDouble(Gap::gapM))
                .toList();
    }

    /** The smallest gap between a tube and an obstacle. */
    public static Gap gap(Tube tube, CentreLine middle, Obstacle obstacle) {
        CentreLine.Nearest nearest = middle.nearest(Places.envelope(obstacle));
        return new Gap(
                obstacle.name(),
                obstacle.near(),
                nearest.distance() - tube.outsideDiameter() / 2,
                Places.spot(nearest.at()),
                nearest.along());
    }
}
