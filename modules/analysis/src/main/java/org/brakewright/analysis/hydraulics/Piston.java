package org.brakewright.analysis.hydraulics;

import java.util.stream.DoubleStream;
import org.brakewright.kernel.hydraulics.MasterCylinder;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * A master's piston, or a tandem's chamber, with all the lines that it fills: pressure and stroke follow from the push.
 *
 * <p>Maintainer's note. The spring's force rises with the stroke, and the stroke with the pressure:
 * p A + k (s0 + V(p)/A) = F - S - friction. The left side rises with p, so there is one answer; without a spring rate it
 * is explicit.
 *
 * @param area m2
 * @param spring its return spring
 * @param lostStroke until the port closes, m
 * @param feeds what it fills
 */
public record Piston(double area, Spring spring, double lostStroke, Feeds feeds) {

    private static final double CLOSE = 1e-9;

    /**
     * A return spring with the friction of the seals.
     *
     * @param force at rest with that friction, N
     * @param rate N/m
     */
    public record Spring(double force, double rate) {}

    /**
     * The axles that a piston fills.
     *
     * @param front line to the front
     * @param frontShare share of the front's brakes that hang on this piston: 1, 1/2 or 0
     * @param rear line to the rear
     * @param rearShare share of the rear's brakes
     */
    public record Feeds(AxleLine front, double frontShare, AxleLine rear, double rearShare) {
        /** Whether there is no brake on the piston any more. */
        public boolean isEmpty() {
            return frontShare == 0 && rearShare == 0;
        }

        /** Share of an axle's brakes that hangs on the piston. */
        public double share(AxleEnd axle) {
            return axle == AxleEnd.FRONT ? frontShare : rearShare;
        }

        /** The line to an axle. */
        public AxleLine line(AxleEnd axle) {
            return axle == AxleEnd.FRONT ? front : rear;
        }

        double volume(double pressure) {
            double toFront = frontShare > 0 ? frontShare * front.volume(pressure) : 0;
            return rearShare > 0 ? toFront + rearShare * rear.volume(pressure) : toFront;
        }

        DoubleStream bends() {
            return DoubleStream.concat(
                    frontShare > 0 ? front.bends() : DoubleStream.empty(),
                    rearShare > 0 ? rear.bends() : DoubleStream.empty());
        }
    }

    static Piston of(Master master, double lostStroke, Feeds feeds) {
        return new Piston(
                master.area(),
                new Spring(master.springForce() + master.sealFriction(), master.springRate()),
                lostStroke,
                feeds);
    }

    /** The same piston in front of an open circuit: it fills nothing. */
    Piston opened() {
        return new Piston(area, spring, lostStroke, new Feeds(feeds.front(), 0, feeds.rear(), 0));
    }

    /** The same piston with a share of air in the fluid of all its lines. */
    Piston aired(double share) {
        Feeds aired = new Feeds(
                feeds.front().withFreeAir(share),
                feeds.frontShare(),
                feeds.rear().withFreeAir(share),
                feeds.rearShare());
        return new Piston(area, spring, lostStroke, aired);
    }

    /** Pressure (Pa) that a stroke (m) gives, up to one that it is known not to pass; none before the port is closed. */
    double pressureAt(double stroke, double most) {
        return Crossing.between(tried -> stroke(tried) - stroke, 0, most).orElse(0);
    }

    /** Pressure and stroke under a push (N). */
    public PistonState at(double push) {
        double over = push - spring.force();
        if (over <= 0) {
            return new PistonState(push, 0, 0);
        }
        if (over <= spring.rate() * stroke(0)) {
            return new PistonState(push, 0, over / spring.rate());
        }
        double pressure = spring.rate() == 0 ? law(0).pressure(push) : pressure(push);
        return new PistonState(push, pressure, stroke(pressure));
    }

    /** Stroke (m) that gives a pressure (Pa) above none. */
    public double stroke(double pressure) {
        return lostStroke + feeds.volume(pressure) / area;
    }

    /** Push (N) that gives a pressure (Pa). */
    double push(double pressure) {
        return law(stroke(pressure)).push(pressure);
    }

    /** Pushes (N) at which spring, port, valves or wheel brakes set in or end. */
    DoubleStream bends() {
        DoubleStream home = DoubleStream.of(spring.force(), push(0));
        return DoubleStream.concat(home, feeds.bends().map(this::push));
    }

    /** How far a state's push lies off the one that its pressure and stroke need, over the push. */
    double imbalance(PistonState state) {
        return state.pressure() == 0 ? 0 : Math.abs(push(state.pressure()) / state.push() - 1);
    }

    private double pressure(double push) {
        double most = law(lostStroke).pressure(push);
        double next = law(stroke(most)).pressure(push);
        return Crossing.rising(pressure -> push(pressure) - push, new Bounds(0, most, CLOSE * most), most, next);
    }

    private MasterCylinder law(double stroke) {
        return new MasterCylinder(area, spring.force() + spring.rate() * stroke, 1.0);
    }
}
