package org.brakewright.analysis.vehicle;

import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedLoadCase;

/** Axle loads of a load case. */
public final class Loads {
    private Loads() {}

    /** Static axle loads in N with what moves them in braking. */
    public static AxleLoads of(ResolvedCar car, ResolvedLoadCase loadCase) {
        return new AxleLoads(
                loadCase.frontMass() * Gravity.STANDARD,
                loadCase.rearMass() * Gravity.STANDARD,
                car.wheelbase(),
                loadCase.cgHeight());
    }
}
