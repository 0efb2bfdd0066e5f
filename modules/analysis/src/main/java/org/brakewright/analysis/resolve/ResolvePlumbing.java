package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.lines.TubeMetal;
import org.brakewright.kernel.tubing.Springback;
import org.brakewright.model.Given;
import org.brakewright.model.lines.Bender;
import org.brakewright.model.lines.Corner;
import org.brakewright.model.lines.Part;
import org.brakewright.model.lines.Plumbing;
import org.brakewright.model.lines.Spot;
import org.brakewright.model.lines.Tube;
import org.brakewright.model.resolved.ResolvedLines;
import org.jspecify.annotations.Nullable;

/** Completes the routes of the lines. */
final class ResolvePlumbing {
    private static final String BENDER = "plumbing.bender.";
    private static final Default FIRST_GRIP = practice(0.030, 0.015, 0.060, "hand benders hold 15 to 60 mm; try yours");
    private static final Default BETWEEN = practice(0.010, 0.0, 0.030, "hand benders need up to 30 mm; try yours");
    private static final Default LAST_GRIP = practice(0.020, 0.010, 0.050, "hand benders need 10 to 50 mm; try yours");
    private static final Default FLARE = practice(0.002, 0.0005, 0.004, "flares take 0.5 to 4 mm; flare a trial piece");
    private static final Default NUT = practice(0.030, 0.020, 0.050, "nuts and flaring clamps for 3/16 in tube");
    private static final Default SAW = practice(0.0, 0.0, 0.0015, "a tube cutter loses nothing, a hacksaw 1 mm");

    private final Values values;

    ResolvePlumbing(Values values) {
        this.values = values;
    }

    /** Where the lines run; empty when nothing is told or it cannot be. */
    Optional<ResolvedLines> lines(@Nullable Plumbing told) {
        if (told == null) {
            return Optional.empty();
        }
        ResolvedLines.Bender bender = bender(told.bender());
        double kept = kept(told, bender);
        List<ResolvedLines.Tube> tubes = told.tubes().stream()
                .map(tube -> tube(tube, bender, kept, told.bender().angleKept() == null))
                .toList();
        ResolvedLines lines = new ResolvedLines(
                bender,
                told.stockLengths().stream().map(values::need).toList(),
                values.take(told.sawCut(), "plumbing.saw_cut", SAW),
                values.take(told.flareAllowance(), "plumbing.flare_allowance", FLARE),
                values.take(told.nutStraight(), "plumbing.nut_straight", NUT),
                told.parts().stream().map(this::part).toList(),
                tubes,
                all(told.hoses()).stream()
                        .map(hose -> new ResolvedLines.Hose(
                                hose.name(), values.need(hose.length()), hose.start(), hose.end()))
                        .toList(),
                all(told.obstacles()).stream()
                        .map(new ResolveObstacle(values)::obstacle)
                        .toList());
        boolean sound = values.triesElsewhere("plumbing.") || new PlumbingFaults(values, told, lines).none();
        return sound ? Optional.of(lines) : Optional.empty();
    }

    private ResolvedLines.Bender bender(Bender bender) {
        return new ResolvedLines.Bender(
                values.need(bender.radius()),
                values.take(bender.firstGrip(), BENDER + "first_grip", FIRST_GRIP),
                values.take(bender.between(), BENDER + "between", BETWEEN),
                values.take(bender.lastGrip(), BENDER + "last_grip", LAST_GRIP));
    }

    /** The ledger shows the law's share for the first tube; each tube then takes that of its own metal and size. */
    private double kept(Plumbing told, ResolvedLines.Bender bender) {
        double law = told.tubes().stream()
                .findFirst()
                .map(tube -> byLaw(tube, bender.radius()))
                .orElse(1.0);
        return values.take(
                told.bender().angleKept(),
                BENDER + "angle_kept",
                estimate(
                        law,
                        Math.min(law, 0.94),
                        1.0,
                        "an elastic, ideally plastic bar as thick as the tube; bend a trial piece"));
    }

    private double byLaw(Tube tube, double radius) {
        double outside = values.need(tube.outsideDiameter());
        TubeMetal metal = TubeMetal.of(tube.material());
        double inside = Math.max(radius - outside / 2, outside / 4);
        return new Springback(outside, metal.yield(), metal.youngsModulus()).angleKept(inside);
    }

    private ResolvedLines.Tube tube(Tube tube, ResolvedLines.Bender bender, double kept, boolean byLaw) {
        List<Corner> corners = tube.points();
        List<Double> radii = new ArrayList<>();
        for (int i = 1; i < corners.size() - 1; i++) {
            Given radius = corners.get(i).bendRadius();
            radii.add(radius == null ? bender.radius() : values.need(radius));
        }
        return new ResolvedLines.Tube(
                tube.name(),
                tube.material(),
                values.need(tube.outsideDiameter()),
                values.need(tube.wall()),
                tube.start(),
                tube.end(),
                corners.stream().map(this::spot).toList(),
                radii,
                all(tube.clips()).stream().map(values::need).toList(),
                tube.clips() != null,
                byLaw && !values.overridden(BENDER + "angle_kept") ? byLaw(tube, bender.radius()) : kept);
    }

    private ResolvedLines.Part part(Part part) {
        return new ResolvedLines.Part(
                part.name(), part.kind(), part.circuit(), spot(part.at()), Boolean.TRUE.equals(part.bleeder()));
    }

    private ResolvedLines.Spot spot(Spot spot) {
        return new ResolvedLines.Spot(values.need(spot.forward()), values.need(spot.left()), values.need(spot.up()));
    }

    private ResolvedLines.Spot spot(Corner corner) {
        return new ResolvedLines.Spot(
                values.need(corner.forward()), values.need(corner.left()), values.need(corner.up()));
    }

    private static <T> List<T> all(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }
}
