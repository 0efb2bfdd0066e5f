package org.brakewright.kernel.friction;

/**
 * Two shoes in series: the drum drags the primary shoe, whose lower end pushes a floating link, which pushes the secondary
 * shoe against the anchor.
 *
 * <p>Cylinder push F at height h1 above the drum center, link at depth h2 below it, anchor at height ha; pushes square to the
 * center line. With S1 the primary's leading factor about the link, moments about the drum center (lining pressure passes
 * through it) give the link force {@code R = F (h1 + S1 r)/h2}. Moments of the secondary about the anchor, with the arm
 * {@code c2 = h2 + ha} of its own tip, give {@code C* = S1 + S2 (R/F + (ha - h1)/c2)}. Lining pressure is that of a pivoted
 * shoe, which a floating shoe follows only roughly: trust trends more than figures.
 *
 * @param primary shoe with its pivot at the link: pivotDistance h2, actuationArm h1 + h2
 * @param secondary shoe with its pivot at the anchor: pivotDistance ha, actuationArm ha + h2
 */
public record DuoServo(DrumShoe primary, DrumShoe secondary) {
    private static final double GEOMETRY_TOLERANCE = 1e-6;

    public DuoServo {
        Require.that(
                primary.drumRadius() == secondary.drumRadius(),
                "secondary.drumRadius",
                secondary.drumRadius(),
                "must be the primary's " + primary.drumRadius());
        double arm = secondary.pivotDistance() + primary.pivotDistance();
        Require.that(
                Math.abs(secondary.actuationArm() - arm) <= GEOMETRY_TOLERANCE * arm,
                "secondary.actuationArm",
                secondary.actuationArm(),
                "must reach from anchor to link, " + arm);
        double cylinder = primary.actuationArm() - primary.pivotDistance();
        Require.that(
                cylinder <= secondary.pivotDistance(),
                "primary.actuationArm",
                primary.actuationArm(),
                "must put the cylinder at or below the anchor");
    }

    /** Friction coefficient from which the first of the two shoes locks by itself. */
    public double selfLockFriction() {
        return Math.min(primary.selfLockFriction(), secondary.selfLockFriction());
    }

    /** Brake factor C* on the push of one cylinder piston, at a lining friction. */
    public BrakeFactor factor(double friction) {
        return switch (primary.leading(friction)) {
            case BrakeFactor.SelfLocking locked -> new BrakeFactor.SelfLocking(friction, selfLockFriction());
            case BrakeFactor.Stable first ->
                switch (secondary.leading(friction)) {
                    case BrakeFactor.SelfLocking locked -> new BrakeFactor.SelfLocking(friction, selfLockFriction());
                    case BrakeFactor.Stable second -> inSeries(first, second);
                };
        };
    }

    /** Force on the link over the cylinder's push, from the primary's leading factor. */
    private double linkForce(double primaryFactor) {
        double cylinder = primary.actuationArm() - primary.pivotDistance();
        return (cylinder + primaryFactor * primary.drumRadius()) / primary.pivotDistance();
    }

    private BrakeFactor.Stable inSeries(BrakeFactor.Stable first, BrakeFactor.Stable second) {
        double cylinder = primary.actuationArm() - primary.pivotDistance();
        double direct = (secondary.pivotDistance() - cylinder) / secondary.actuationArm();
        double push = linkForce(first.value()) + direct;
        double pushPerFriction = first.perFriction() * primary.drumRadius() / primary.pivotDistance();
        return new BrakeFactor.Stable(
                first.value() + second.value() * push,
                first.perFriction() + second.perFriction() * push + second.value() * pushPerFriction);
    }
}
