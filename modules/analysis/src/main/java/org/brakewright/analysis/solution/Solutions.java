package org.brakewright.analysis.solution;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.EffortFor;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.solution.Solution.Ended;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Puts every push that an analysis tells back into the equations. */
public final class Solutions {
    /** The curve's last force, found again. */
    private static final double SAME = 1e-9;

    private Solutions() {}

    /** The residual of an analysis of a build, over its operating points, efforts and panic push. */
    public static Solution of(ResolvedBuild build, Analysis analysis) {
        Chain chain = Chain.of(build);
        ChainCurve curve = ChainCurve.of(chain);
        double last = curve.bends().getLast().pedalForce();
        double[] forces = forces(analysis)
                .filter(force -> force > 0 && force <= last * (1 + SAME))
                .distinct()
                .toArray();
        double worst = 0;
        double there = 0;
        for (double force : forces) {
            double residual = residual(chain, curve.pushed(force), force);
            if (residual >= worst) {
                worst = residual;
                there = force;
            }
        }
        return new Solution(worst, there, forces.length, ended(analysis.hardStop(), last));
    }

    /** What masters and bar leave unbalanced, or the pedal's lever. */
    private static double residual(Chain chain, Pushed pushed, double pedalForce) {
        double atPad = Math.abs(pushed.state().pedalForce() / pedalForce - 1);
        return Math.max(chain.apply().imbalance(pushed.apply()), atPad);
    }

    private static DoubleStream forces(Analysis analysis) {
        Stream<OperatingPoint> points =
                analysis.loadCases().stream().flatMap(result -> result.atDeceleration().stream());
        Stream<Double> efforts =
                analysis.effortFor().stream().map(EffortFor::pedalForceN).filter(force -> force != null);
        HardStop stop = analysis.hardStop();
        return Stream.of(
                        points.map(OperatingPoint::pedalForceN),
                        efforts,
                        stop == null
                                ? Stream.<Double>empty()
                                : Stream.of(stop.point().pedalForceN()),
                        Stream.of(analysis.panicPush().pedalForceN()))
                .flatMap(forces -> forces)
                .mapToDouble(force -> force);
    }

    private static Ended ended(@Nullable HardStop stop, double lastForce) {
        if (stop == null) {
            return lastForce < ChainCurve.MOST_PEDAL_FORCE * (1 - SAME) ? Ended.OVER_CENTRE : Ended.NOT_REACHED;
        }
        double least = Math.min(stop.reserveShare(), Math.min(stop.frontStrokeLeftShare(), stop.rearStrokeLeftShare()));
        if (least >= 0) {
            return Ended.REACHED;
        }
        return least == stop.reserveShare()
                ? Ended.PEDAL_STOP
                : least == stop.frontStrokeLeftShare() ? Ended.FRONT_MASTER : Ended.REAR_MASTER;
    }
}
