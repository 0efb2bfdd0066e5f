package org.brakewright.analysis.failure;

import java.util.List;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.OneAxleBraked;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The least deceleration over the load cases for given brake forces.
 *
 * @param decelerationG g
 * @param loadCase name of the load case that gives it
 * @param gripLimited whether tyre grip, not brake force, sets it
 */
record LeastDeceleration(double decelerationG, String loadCase, boolean gripLimited) {
    /** Relative to the weight. */
    private static final double ROUNDING = 1e-9;

    /** Only one axle braked with a force in N. */
    static LeastDeceleration oneAxle(ResolvedBuild build, double force, boolean front) {
        double grip = build.car().grip();
        LeastDeceleration least = new LeastDeceleration(Double.POSITIVE_INFINITY, "", false);
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            AxleLoads loads = Loads.of(build.car(), loadCase);
            double byGrip = front ? OneAxleBraked.frontOnly(loads, grip) : OneAxleBraked.rearOnly(loads, grip);
            least = least.or(force / loads.weight(), byGrip, loadCase.name());
        }
        return least;
    }

    /** One front wheel and the rear wheel across braked: half the grip of the car at the most. */
    static LeastDeceleration oneDiagonal(ResolvedBuild build, ChainState state) {
        LeastDeceleration least = new LeastDeceleration(Double.POSITIVE_INFINITY, "", false);
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            double weight = Loads.of(build.car(), loadCase).weight();
            least = least.or(state.totalForce() / weight, build.car().grip() / 2, loadCase.name());
        }
        return least;
    }

    /** Both axles braked as the chain gives it, never more than the grip. */
    static LeastDeceleration bothAxles(ResolvedBuild build, ChainState state) {
        LeastDeceleration least = new LeastDeceleration(Double.POSITIVE_INFINITY, "", false);
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            double weight = Loads.of(build.car(), loadCase).weight();
            least = least.or(state.totalForce() / weight, build.car().grip(), loadCase.name());
        }
        return least;
    }

    /**
     * Brake force on wheels of an axle.
     *
     * @param axle that the wheels are on
     * @param share of that axle's wheels
     * @param force as long as they turn, N
     */
    record Braked(AxleEnd axle, double share, double force) {
        double atGrip(AxleLoads loads, double grip, double decelerationG) {
            double load = axle == AxleEnd.FRONT ? loads.front(decelerationG) : loads.rear(decelerationG);
            return Math.min(force, grip * share * load);
        }
    }

    /** Each of some wheels braked with its force, or at its grip where that is less. */
    static LeastDeceleration held(ResolvedBuild build, List<Braked> braked) {
        double grip = build.car().grip();
        double force = braked.stream().mapToDouble(Braked::force).sum();
        LeastDeceleration least = new LeastDeceleration(Double.POSITIVE_INFINITY, "", false);
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            AxleLoads loads = Loads.of(build.car(), loadCase);
            double held = Crossing.between(
                            z -> braked.stream()
                                            .mapToDouble(each -> each.atGrip(loads, grip, z))
                                            .sum()
                                    - z * loads.weight(),
                            0,
                            grip * (1 + ROUNDING))
                    .orElse(grip);
            double byForce = force / loads.weight();
            double byGrip = byForce - held > ROUNDING ? held : Double.POSITIVE_INFINITY;
            least = least.or(byForce, Math.min(byGrip, loads.liftOffDecelerationG()), loadCase.name());
        }
        return least;
    }

    private LeastDeceleration or(double byForce, double byGrip, String loadCase) {
        double g = Math.min(byForce, byGrip);
        return g < decelerationG ? new LeastDeceleration(g, loadCase, byGrip < byForce) : this;
    }
}
