package org.brakewright.analysis;

import java.util.List;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.chain.TravelBudget;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.analysis.vehicle.OperatingPoints;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.model.resolved.ResolvedBuild;

/** A resolved car on the rollers: any pedal force or deceleration can be tried. */
public record Rig(ResolvedBuild build) {

    /** The rig with a written car on it. */
    public static Rig of(WrittenCar car) {
        return new Rig(car.resolved());
    }

    /** From foot to tyre. */
    public Chain chain() {
        return Chain.of(build);
    }

    /** The same as a broken line. */
    public ChainCurve curve() {
        return ChainCurve.of(chain());
    }

    /** The whole car at a pedal force in N. */
    public Pushed push(double pedalForce) {
        return chain().atPedalForce(pedalForce);
    }

    /** The whole car at a pressure in Pa at the front wheels. */
    public Pushed frontAt(double pressure) {
        return curve().reach(ChainState::frontPressure, pressure).orElseThrow();
    }

    /** Travel by cause. */
    public List<TravelShare> budget(Pushed pushed) {
        return TravelBudget.of(build.pedal(), chain(), pushed);
    }

    /** Axle loads of the heaviest load case. */
    public AxleLoads loads() {
        return Loads.of(build.car(), build.car().heaviest());
    }

    /** State at a pedal force in N. */
    public ChainState at(double pedalForce) {
        return push(pedalForce).state();
    }

    /** Operating point of the heaviest load case at a pedal force in N. */
    public OperatingPoint pushed(double pedalForce) {
        return points().at(pedalForce, loads());
    }

    /** Operating point of the heaviest load case at a deceleration in g. */
    public OperatingPoint braked(double decelerationG) {
        return points().atDeceleration(decelerationG, loads()).orElseThrow();
    }

    /** Operating point at a deceleration in g of the load case with a number. */
    public OperatingPoint braked(double decelerationG, int loadCase) {
        AxleLoads loads = Loads.of(build.car(), build.car().loadCases().get(loadCase));
        return points().atDeceleration(decelerationG, loads).orElseThrow();
    }

    private OperatingPoints points() {
        return new OperatingPoints(build, curve());
    }
}
