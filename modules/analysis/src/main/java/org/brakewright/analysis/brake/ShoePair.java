package org.brakewright.analysis.brake;

import java.util.OptionalDouble;
import org.brakewright.kernel.friction.BrakeFactor;
import org.brakewright.kernel.friction.DrumShoe;
import org.brakewright.kernel.friction.DuoServo;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.resolved.ResolvedShoes;

/**
 * The two shoes of a drum, and which law their arrangement follows each way the wheel turns.
 *
 * @param arrangement how they stand to each other
 * @param first leads, or drives the other one, when the car rolls forward
 * @param second the other shoe
 */
public record ShoePair(ShoeArrangement arrangement, DrumShoe first, DrumShoe second) {
    /**
     * Largest brake factor that is reckoned with. A drum beyond it is at the edge of locking by itself or past it: its
     * numbers are then those of this factor, and a finding says that they are and that the car must not be driven.
     */
    public static final double MOST_FACTOR = 10;

    /** The shoes of a resolved drum. */
    public static ShoePair of(ResolvedShoes shoes) {
        return new ShoePair(
                shoes.arrangement(), shoe(shoes.first(), shoes.drumRadius()), shoe(shoes.second(), shoes.drumRadius()));
    }

    /** The factor that numbers are given with. */
    public static double reckoned(BrakeFactor factor) {
        return switch (factor) {
            case BrakeFactor.Stable stable -> Math.min(stable.value(), MOST_FACTOR);
            case BrakeFactor.SelfLocking locked -> MOST_FACTOR;
        };
    }

    /** Brake factor with the car rolling forward, at a lining friction. */
    public BrakeFactor forward(double friction) {
        return switch (arrangement) {
            case LEADING_TRAILING -> BrakeFactor.leadingTrailing(first, second, friction);
            case TWO_LEADING -> BrakeFactor.twoLeading(first, friction);
            case SELF_ENERGISING -> BrakeFactor.duoServo(first, second, friction);
        };
    }

    /** Brake factor with the car rolling backward, at a lining friction. */
    public BrakeFactor backward(double friction) {
        return switch (arrangement) {
            case LEADING_TRAILING -> BrakeFactor.leadingTrailing(second, first, friction);
            case TWO_LEADING -> BrakeFactor.twoTrailing(first, friction);
            case SELF_ENERGISING -> turned().factor(friction);
        };
    }

    /** Least friction, of both ways of rolling, from which the drum locks without a push. */
    public double selfLockFriction() {
        double forward = first.selfLockFriction();
        return switch (arrangement) {
            case LEADING_TRAILING -> Math.min(forward, second.selfLockFriction());
            case TWO_LEADING -> forward;
            case SELF_ENERGISING ->
                Math.min(new DuoServo(first, second).selfLockFriction(), turned().selfLockFriction());
        };
    }

    /** Share of the first shoe in the forward factor; empty when it locks by itself. */
    public OptionalDouble firstShare(double friction) {
        return forward(friction) instanceof BrakeFactor.Stable whole
                        && first.leading(friction) instanceof BrakeFactor.Stable leading
                ? OptionalDouble.of(leading.value() / whole.value())
                : OptionalDouble.empty();
    }

    /** Greatest lining pressure, Pa, going forward with a push in N on each shoe; empty when it locks by itself. */
    public OptionalDouble liningPressure(double push, double friction, double width) {
        if (!(forward(friction) instanceof BrakeFactor.Stable whole)
                || !(first.leading(friction) instanceof BrakeFactor.Stable leading)) {
            return OptionalDouble.empty();
        }
        double onFirst = first.leadingPressure(push, friction, width);
        if (arrangement != ShoeArrangement.SELF_ENERGISING
                || !(second.leading(friction) instanceof BrakeFactor.Stable secondary)) {
            return OptionalDouble.of(onFirst);
        }
        double pushed = push * (whole.value() - leading.value()) / secondary.value();
        return OptionalDouble.of(Math.max(onFirst, second.leadingPressure(pushed, friction, width)));
    }

    /** Rolling backward, the second shoe drives the first: each rests where the other did, half a turn away. */
    private DuoServo turned() {
        return new DuoServo(restingLike(first, second), restingLike(second, first));
    }

    private static DrumShoe restingLike(DrumShoe place, DrumShoe lining) {
        return new DrumShoe(
                place.pivotDistance(),
                place.drumRadius(),
                Math.PI - lining.toeAngle(),
                Math.PI - lining.heelAngle(),
                place.actuationArm());
    }

    private static DrumShoe shoe(ResolvedShoes.Shoe shoe, double drumRadius) {
        return new DrumShoe(
                shoe.pivotDistance(), drumRadius, shoe.liningStart(), shoe.liningEnd(), shoe.actuationArm());
    }
}
