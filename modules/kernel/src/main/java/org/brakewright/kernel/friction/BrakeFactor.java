package org.brakewright.kernel.friction;

/**
 * Friction force at the drum over the push on one shoe's tip, or the news that the brake locks by itself.
 *
 * <p>Sums of shoe factors of pivoted shoes; see {@link DrumShoe}. Source: R. Limpert, Brake Design and Safety, ch. 2 (from
 * memory). The duo-servo is statics, derived at {@link DuoServo}.
 */
public sealed interface BrakeFactor {
    /**
     * A brake that releases when its push goes.
     *
     * @param value C*
     * @param perFriction dC*&#47;dmu, how much the factor moves with lining friction
     */
    record Stable(double value, double perFriction) implements BrakeFactor {
        public Stable {
            Require.positive("value", value);
            Require.positive("perFriction", perFriction);
        }

        /** Relative change of the factor per relative change of friction, at the friction it was worked for. */
        public double relativeSensitivity(double friction) {
            return perFriction * friction / value;
        }
    }

    /**
     * A brake whose friction alone holds or deepens the braking.
     *
     * @param friction the friction asked for
     * @param selfLockFriction the friction from which it locks
     */
    record SelfLocking(double friction, double selfLockFriction) implements BrakeFactor {
        public SelfLocking {
            Require.positive("friction", friction);
            Require.positive("selfLockFriction", selfLockFriction);
        }
    }

    /** One leading and one trailing shoe under the same push; forward and reverse alike when the shoes are alike. */
    static BrakeFactor leadingTrailing(DrumShoe leading, DrumShoe trailing, double friction) {
        requireOneDrum(leading, trailing);
        return sum(leading.leading(friction), trailing.trailing(friction));
    }

    /** Two leading shoes, each with its own cylinder; in reverse it is {@link #twoTrailing}. */
    static BrakeFactor twoLeading(DrumShoe shoe, double friction) {
        BrakeFactor one = shoe.leading(friction);
        return sum(one, one);
    }

    /** Two trailing shoes: what a two-leading brake is when the car rolls backwards. */
    static Stable twoTrailing(DrumShoe shoe, double friction) {
        Stable one = shoe.trailing(friction);
        return new Stable(2 * one.value(), 2 * one.perFriction());
    }

    /** A primary shoe that drives the secondary; see {@link DuoServo}. In reverse the shoes change places. */
    static BrakeFactor duoServo(DrumShoe primary, DrumShoe secondary, double friction) {
        return new DuoServo(primary, secondary).factor(friction);
    }

    private static BrakeFactor sum(BrakeFactor one, BrakeFactor other) {
        return switch (one) {
            case SelfLocking locked -> locked;
            case Stable first ->
                switch (other) {
                    case SelfLocking locked -> locked;
                    case Stable second ->
                        new Stable(first.value() + second.value(), first.perFriction() + second.perFriction());
                };
        };
    }

    private static void requireOneDrum(DrumShoe one, DrumShoe other) {
        Require.that(
                one.drumRadius() == other.drumRadius(),
                "drumRadius",
                other.drumRadius(),
                "must be the other shoe's " + one.drumRadius());
    }
}
