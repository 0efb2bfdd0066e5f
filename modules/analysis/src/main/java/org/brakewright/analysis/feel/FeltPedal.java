package org.brakewright.analysis.feel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.chain.TravelBudget;
import org.brakewright.analysis.feel.FeelCurve.End;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Draws one car's force-travel curve over the thrust behind the pedal. */
final class FeltPedal {
    private static final int STEPS = 26;

    /** Beside a bend, relative to it, where a piston without spring rate leaps its lost stroke. */
    private static final double BESIDE = 1e-9;

    private final ResolvedBuild build;
    private final Chain chain;
    private final ChainCurve curve;
    private final double weight;

    FeltPedal(ResolvedBuild build) {
        this.build = build;
        this.chain = Chain.of(build);
        this.curve = ChainCurve.of(chain);
        this.weight = Loads.of(build.car(), build.car().heaviest()).weight();
    }

    /** Travel by cause under a pedal force (N). */
    List<TravelShare> budget(double pedalForce) {
        return TravelBudget.of(build.pedal(), chain, curve.pushed(pedalForce));
    }

    /** The curve up to a pedal force (N), or to what ends it. */
    FeelCurve curve(double range, @Nullable Double hardStopForce) {
        Pushed last = curve.pushed(range);
        End end = last.state().pedalForce() < range * (1 - BESIDE) ? End.OVER_CENTRE : End.FORCE;
        List<FeelPoint> points = new ArrayList<>();
        double before = 0;
        for (double thrust : thrusts(last.state().thrust())) {
            Pushed pushed = chain.pushed(thrust);
            if (excess(pushed) > 0) {
                double met = met(before, thrust);
                points.add(point(chain.pushed(met)));
                end = what(chain.pushed(Math.nextUp(met)));
                break;
            }
            points.add(point(pushed));
            before = thrust;
        }
        return new FeelCurve(
                List.copyOf(points),
                end,
                runOut(points.getLast()),
                hardStopForce == null ? null : curve.pushed(hardStopForce).padTravel());
    }

    /** Where the booster has given all it can, when that comes before the curve's last point. */
    private @Nullable FeelPoint runOut(FeelPoint last) {
        OptionalDouble thrust = chain.apply().runOut();
        if (thrust.isEmpty()) {
            return null;
        }
        FeelPoint there = point(chain.pushed(thrust.getAsDouble()));
        return there.pedalForceN() <= last.pedalForceN() && there.padTravelM() <= last.padTravelM() ? there : null;
    }

    /** Closer together at first, and both sides of every bend. */
    private SortedSet<Double> thrusts(double last) {
        SortedSet<Double> thrusts = new TreeSet<>();
        thrusts.add(BESIDE * last);
        for (int step = 0; step <= STEPS; step++) {
            thrusts.add(last * step * step / (STEPS * STEPS));
        }
        for (double bend : chain.bends()) {
            if (bend * (1 + BESIDE) < last) {
                thrusts.add(bend);
                thrusts.add(bend * (1 + BESIDE));
            }
        }
        return thrusts;
    }

    /** The last thrust (N) with pedal and masters inside their ends; halving, for travel may leap. */
    private double met(double inside, double beyond) {
        double low = inside;
        double high = beyond;
        for (double middle = 0.5 * (low + high); middle > low && middle < high; middle = 0.5 * (low + high)) {
            if (excess(chain.pushed(middle)) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private double excess(Pushed pushed) {
        return Math.max(pedal(pushed), Math.max(front(pushed), rear(pushed)));
    }

    private End what(Pushed beyond) {
        double most = excess(beyond);
        return most == pedal(beyond) ? End.PEDAL_STOP : most == front(beyond) ? End.FRONT_MASTER : End.REAR_MASTER;
    }

    /** Share of its way by which the pedal is beyond its stop. */
    private double pedal(Pushed pushed) {
        return pushed.padTravel() / build.pedal().travelToStop() - 1;
    }

    private double front(Pushed pushed) {
        return pushed.frontStroke() / Strokes.front(build.apply()) - 1;
    }

    private double rear(Pushed pushed) {
        return pushed.rearStroke() / Strokes.rear(build.apply()) - 1;
    }

    private FeelPoint point(Pushed pushed) {
        return new FeelPoint(
                pushed.state().pedalForce(),
                pushed.padTravel(),
                pushed.state().frontPressure(),
                pushed.state().rearPressure(),
                pushed.frontStroke(),
                pushed.rearStroke(),
                pushed.state().totalForce() / weight,
                pushed.apply().bar().tilt());
    }
}
