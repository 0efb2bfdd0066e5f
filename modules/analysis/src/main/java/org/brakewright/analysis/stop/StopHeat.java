package org.brakewright.analysis.stop;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.heat.HeatedCar;
import org.brakewright.kernel.ode.Integration;
import org.brakewright.kernel.ode.Integrator;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.ode.Rates;
import org.brakewright.kernel.ode.Span;
import org.brakewright.kernel.ode.Watcher;
import org.brakewright.kernel.thermal.WheelHeat;

/**
 * How hot discs and drums get along a stop, from the temperature of the air on.
 *
 * <p>Maintainer's note. Friction is that of the working brake whatever its temperature, so the motion does not ask for the heat, and
 * heat is followed behind it: between two looks the work of each axle, which the motion's own account tells, comes in evenly. A locked
 * wheel does no work in its brake; the tyre has it all.
 */
final class StopHeat {
    private static final Precision PRECISION = new Precision(1e-6, 1e-9);

    /** Looks nearer than this are taken as one, s. */
    private static final double SAME = 1e-6;

    private StopHeat() {}

    /** The moments to be told, with temperatures; without them when they could not be followed. */
    static List<StopSample> along(HeatedCar car, List<StopLook> looks) {
        List<StopSample> samples = new ArrayList<>();
        double[] state = car.cold();
        StopLook from = looks.getFirst();
        for (StopLook look : looks) {
            if (look.time() - from.time() > SAME) {
                if (!warm(car, from, look, state)) {
                    return plain(looks);
                }
                from = look;
            }
            if (look.kept()) {
                samples.add(look.moment().with(state[WheelHeat.ROTOR], state[HeatedCar.REAR + WheelHeat.ROTOR]));
            }
        }
        return List.copyOf(samples);
    }

    /** The moments to be told of a car whose brakes' heat is not known. */
    static List<StopSample> plain(List<StopLook> looks) {
        return looks.stream().filter(StopLook::kept).map(StopLook::moment).toList();
    }

    /** Moves the state from one look to another; false when that did not come to its end. */
    private static boolean warm(HeatedCar car, StopLook from, StopLook to, double[] state) {
        double time = to.time() - from.time();
        double front = (to.frontWork() - from.frontWork()) / time;
        double rear = (to.rearWork() - from.rearWork()) / time;
        double slowing = (to.moment().speedMS() - from.moment().speedMS()) / time;
        Rates rates =
                (at, now, written) -> car.heated(front, rear, from.moment().speedMS() + slowing * at, now, written);
        return Integrator.follow(rates, new Span(0, time, 0), state, PRECISION, Watcher.NOBODY)
                instanceof Integration.Reached;
    }
}
