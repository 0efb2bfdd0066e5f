package org.brakewright.analysis.heat;

import org.brakewright.kernel.thermal.LumpCooling;
import org.brakewright.kernel.thermal.Surroundings;
import org.brakewright.kernel.thermal.WheelHeat;
import org.brakewright.model.resolved.ResolvedBrakeHeat;

/** Gathers the peaks of one wheel along the way. */
final class AxlePeaks {
    private static final int WHEELS = 2;

    private final ResolvedBrakeHeat brake;
    private final WheelHeat wheel;
    private final int at;
    private double rotor;
    private double face;
    private double faceMean;
    private double lining;
    private double fluid;
    private double fluidTime;
    private double least = 1;
    private double fluxAtStart;

    AxlePeaks(ResolvedBrakeHeat brake, WheelHeat wheel, int at) {
        this.brake = brake;
        this.wheel = wheel;
        this.at = at;
    }

    /** The brakes go on with a force (N) of this axle at a speed (m/s). */
    void applied(double power, double[] state) {
        fluxAtStart = flux(power, state);
    }

    /** Heat flux into the rubbed face, W/m2, by the friction heat of both wheels (W). */
    private double flux(double power, double[] state) {
        double share = wheel.rotorShare(state[at + WheelHeat.ROTOR]);
        return share * power / WHEELS / brake.rotor().sweptArea();
    }

    /** A state on the way. */
    void see(double time, double[] state) {
        double mean = state[at + WheelHeat.ROTOR];
        rotor = Math.max(rotor, mean);
        seeFace(mean, mean);
        lining = Math.max(lining, state[at + WheelHeat.LININGS]);
        if (state[at + WheelHeat.FLUID] > fluid) {
            fluid = state[at + WheelHeat.FLUID];
            fluidTime = time;
        }
    }

    /** A state while braking: friction heat of both wheels (W), time since the brakes went on (s). */
    void braking(double power, double since, double[] state) {
        double mean = state[at + WheelHeat.ROTOR];
        double change = (flux(power, state) - fluxAtStart) / since;
        double excess = WheelHeats.face(brake, mean).excess(fluxAtStart, change, since);
        seeFace(mean + excess, mean);
        least = Math.min(least, brake.lining().force(mean));
    }

    private void seeFace(double temperature, double mean) {
        if (temperature > face) {
            face = temperature;
            faceMean = mean;
        }
    }

    AxleHeat result(double[] end, Surroundings onward) {
        double mean = end[at + WheelHeat.ROTOR];
        LumpCooling cooling =
                new LumpCooling(wheel.rotor().capacity(mean), wheel.rotor().conductance(mean, onward));
        return new AxleHeat(
                rotor,
                face,
                faceMean,
                lining,
                fluid,
                fluidTime,
                least,
                brake.lining().beyondCurve(rotor),
                cooling.timeConstant());
    }
}
