package org.brakewright.kernel.dynamics;

/**
 * A two-axle car in a straight stop whose wheels may slip: forces at the road and deceleration of one moment.
 *
 * <p>The load that moves forward follows the deceleration at once ({@link #settled}), or with the pitching of the body
 * ({@link #pitched}), whose state the caller keeps. In the first case deceleration and loads depend on each other; they
 * are found by repetition, which closes in by the difference of both axles' used grip times height over wheelbase.
 *
 * @param loads the car at rest
 * @param air what the air does at {@code airSpeed}
 * @param airSpeed m/s
 * @param front front wheels
 * @param rear rear wheels
 */
public record SlippingCar(AxleLoads loads, AirForces air, double airSpeed, SlippingAxle front, SlippingAxle rear) {
    private static final int MOST_ROUNDS = 200;
    private static final double SAME = 1e-14;

    public SlippingCar {
        Require.positive("airSpeed", airSpeed);
    }

    /**
     * One moment.
     *
     * @param frontForce at the road, N
     * @param rearForce at the road, N
     * @param deceleration m/s2
     */
    public record Moment(double frontForce, double rearForce, double deceleration) {}

    /** Mass, kg. */
    public double mass() {
        return loads.weight() / Gravity.STANDARD;
    }

    /**
     * The moment at a speed (m/s, above zero) and slips, with the load where the deceleration puts it.
     *
     * @throws ArithmeticException when loads and deceleration do not settle: a car far higher than it is long
     */
    public Moment settled(double speed, double frontSlip, double rearSlip) {
        Shares at = new Shares(
                air.at(speed, airSpeed),
                front.curve().share(frontSlip),
                rear.curve().share(rearSlip));
        double before = 0;
        Moment moment = at(at, 0);
        double missedBefore = moment.deceleration();
        double deceleration = guess(at);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            moment = at(at, transfer(deceleration));
            double missed = moment.deceleration() - deceleration;
            if (Math.abs(missed) <= SAME * (1 + Math.abs(deceleration))) {
                return moment;
            }
            double next = deceleration - missed * (deceleration - before) / (missed - missedBefore);
            before = deceleration;
            missedBefore = missed;
            deceleration = next;
        }
        throw new ArithmeticException("axle loads do not settle at slips " + frontSlip + ", " + rearSlip);
    }

    /** The moment with a known load (N) moved from the rear axle to the front. */
    public Moment pitched(double speed, double frontSlip, double rearSlip, double moved) {
        return at(
                new Shares(
                        air.at(speed, airSpeed),
                        front.curve().share(frontSlip),
                        rear.curve().share(rearSlip)),
                moved);
    }

    /** The air of a moment, and the shares of their greatest force that the tires hold. */
    private record Shares(AirForces air, double front, double rear) {}

    private Moment at(Shares at, double moved) {
        double whole = loads.weight() + at.air().front() + at.air().rear();
        double frontLoad = Math.clamp(loads.frontStatic() + at.air().front() + moved, 0, whole);
        double frontForce = at.front() * front.tires().force(frontLoad);
        double rearForce = at.rear() * rear.tires().force(whole - frontLoad);
        return new Moment(
                frontForce, rearForce, (frontForce + rearForce + at.air().drag()) / mass());
    }

    /** The deceleration (m/s2) itself where grip does not depend on load and no axle lifts; near it elsewhere. */
    private double guess(Shares at) {
        double frontGrip = at.front() * front.tires().grip();
        double rearGrip = at.rear() * rear.tires().grip();
        double atRest = frontGrip * (loads.frontStatic() + at.air().front())
                + rearGrip * (loads.rearStatic() + at.air().rear())
                + at.air().drag();
        return atRest / (mass() * (1 - loads.heightRatio() * (frontGrip - rearGrip)));
    }

    /** Load in N that a steady deceleration in m/s2 moves forward. */
    public double transfer(double deceleration) {
        return mass() * deceleration * loads.heightRatio();
    }
}
