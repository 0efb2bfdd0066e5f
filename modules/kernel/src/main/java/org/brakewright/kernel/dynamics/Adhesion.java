package org.brakewright.kernel.dynamics;

/**
 * Adhesion utilization: braking force of an axle over its load, the grip the tires must find.
 *
 * <p>Source: UN Regulation 13-H Annex 5 and Directive 71/320/EEC Annex II (formula from memory).
 */
public final class Adhesion {
    private Adhesion() {}

    /**
     * Grip that the front tires use.
     *
     * @param frontForce braking force of the front axle, N
     * @param loads the car
     * @param decelerationG deceleration over g that moves the load
     * @throws IllegalArgumentException when an axle in the air is asked for a force
     */
    public static double front(double frontForce, AxleLoads loads, double decelerationG) {
        return used("frontForce", frontForce, loads.front(decelerationG));
    }

    /** Grip that the rear tires use; as {@link #front}. Ask only up to {@link AxleLoads#liftOffDecelerationG()}. */
    public static double rear(double rearForce, AxleLoads loads, double decelerationG) {
        return used("rearForce", rearForce, loads.rear(decelerationG));
    }

    /** Deceleration over g, divided by the greater of the two grips used: 1 when both axles reach their limit at once. */
    public static double efficiency(double frontForce, double rearForce, AxleLoads loads) {
        double decelerationG = (frontForce + rearForce) / loads.weight();
        Require.positive("decelerationG", decelerationG);
        double front = front(frontForce, loads, decelerationG);
        double rear = rear(rearForce, loads, decelerationG);
        return decelerationG / Math.max(front, rear);
    }

    private static double used(String field, double force, double load) {
        Require.notNegative(field, force);
        if (force == 0) {
            return 0;
        }
        Require.that(load > 0, field, force, "cannot act at an axle without load");
        return force / load;
    }
}
