package org.brakewright.analysis.pedal;

import java.util.OptionalDouble;
import org.brakewright.kernel.lever.LimitedLinkage;
import org.brakewright.kernel.lever.LinkageOutcome;
import org.brakewright.kernel.lever.LinkagePosition;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedPedal;

/** The pedal as a lever between rod and pad: one ratio, or a mechanism whose ratio changes on the way. */
public sealed interface Lever {
    /** A ratio this much larger than at rest is close to over-centre; from there on the lever is continued straight. */
    double RUNAWAY = 3;

    /** The lever when the rod has advanced by a travel (m, not negative). */
    LeverState at(double rodTravel);

    /** The lever when the pad has gone a travel (m, without free play, not negative). */
    LeverState atPad(double padTravel);

    /** Whether the ratio is the same all the way. */
    boolean straight();

    /** Pad travel (m, without free play) at which the rod comes into line with the pivot; empty when the stop is met before. */
    OptionalDouble overCentre();

    /** The lever of a pedal. */
    static Lever of(ResolvedPedal pedal) {
        return pedal.mechanism().isPresent()
                ? Jointed.of(
                        LimitedLinkage.of(Mechanisms.linkage(pedal.mechanism().get())),
                        Math.max(0, pedal.travelToStop() - pedal.freePlay()))
                : new Straight(pedal.ratio());
    }

    /**
     * The same ratio all the way.
     *
     * @param ratio pad travel over rod travel
     */
    record Straight(double ratio) implements Lever {
        @Override
        public LeverState at(double rodTravel) {
            return new LeverState(ratio * rodTravel, ratio, 0);
        }

        @Override
        public LeverState atPad(double padTravel) {
            return new LeverState(padTravel, ratio, 0);
        }

        @Override
        public boolean straight() {
            return true;
        }

        @Override
        public OptionalDouble overCentre() {
            return OptionalDouble.empty();
        }
    }

    /**
     * Pad, rod and piston as a mechanism, up to the pedal's stop or to a runaway ratio. What a result would need beyond
     * that is told as if the lever went straight on.
     *
     * @param law the mechanism
     * @param last position from which on it is continued straight
     * @param overCentre pad travel at which the rod comes into line with the pivot
     */
    record Jointed(LimitedLinkage law, LinkagePosition last, OptionalDouble overCentre) implements Lever {

        static Jointed of(LimitedLinkage law, double padTravelToStop) {
            return switch (law.at(padTravelToStop / law.padDistance())) {
                case LinkagePosition there -> new Jointed(law, before(law, there), OptionalDouble.empty());
                case LinkageOutcome.OverCentre(double angle) ->
                    new Jointed(law, runaway(law, angle * (1 - 1e-9)), OptionalDouble.of(angle * law.padDistance()));
                case LinkageOutcome.OutOfReach(double angle) ->
                    new Jointed(law, runaway(law, angle * (1 - 1e-9)), OptionalDouble.empty());
            };
        }

        @Override
        public LeverState at(double rodTravel) {
            if (rodTravel >= last.rodTravel()) {
                double beyond = rodTravel - last.rodTravel();
                return new LeverState(last.padTravel() + beyond * last.ratio(), last.ratio(), last.rodAngle());
            }
            LinkagePosition here = law.atRodTravel(rodTravel).orElse(last);
            return new LeverState(here.padTravel(), here.ratio(), here.rodAngle());
        }

        @Override
        public LeverState atPad(double padTravel) {
            if (padTravel >= last.padTravel()) {
                return new LeverState(padTravel, last.ratio(), last.rodAngle());
            }
            LinkagePosition here = position(law, padTravel / law.padDistance());
            return new LeverState(padTravel, here.ratio(), here.rodAngle());
        }

        @Override
        public boolean straight() {
            return false;
        }

        private static LinkagePosition before(LimitedLinkage law, LinkagePosition there) {
            return there.ratio() <= RUNAWAY * position(law, 0).ratio() ? there : runaway(law, there.pedalAngle());
        }

        private static LinkagePosition runaway(LimitedLinkage law, double angle) {
            double most = RUNAWAY * position(law, 0).ratio();
            double there = Crossing.between(tried -> position(law, tried).ratio() - most, 0, angle)
                    .orElse(angle);
            return position(law, there);
        }

        private static LinkagePosition position(LimitedLinkage law, double angle) {
            return switch (law.at(angle)) {
                case LinkagePosition position -> position;
                case LinkageOutcome.OverCentre(double at) -> position(law, at * (1 - 1e-9));
                case LinkageOutcome.OutOfReach(double at) -> position(law, at * (1 - 1e-9));
            };
        }
    }
}
