package org.brakewright.analysis.hydraulics;

import java.util.stream.DoubleStream;
import org.brakewright.analysis.hydraulics.ApplyState.BarStance;
import org.brakewright.analysis.hydraulics.Piston.Feeds;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.kernel.lever.BarAttitude;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * Two masters under a balance bar.
 *
 * <p>Maintainer's note. The bar's tilt sets the share of each master, the shares set both pressures, these both strokes,
 * and the strokes the tilt: one unknown. With pins in line and parallel rods the share does not depend on the tilt, and
 * nothing is left to iterate. A share beyond 0 or 1 (a bar that would turn away under load) is held there.
 *
 * @param bar as set
 * @param rods how bar and rods stand
 * @param front piston of the front master
 * @param rear piston of the rear master
 * @param limits where the bar and both pistons end
 */
record TwinChain(BalanceBar bar, Rods rods, Piston front, Piston rear, Limits limits) implements ApplyChain {
    static final Bounds TILTS = new Bounds(-1.5, 1.5, 1e-9);

    /**
     * How bar and rods stand.
     *
     * @param setBack of the clevis pins behind the bearing, m
     * @param restLead of the front clevis with both pistons home, m
     * @param restTilt of the bar then, rad
     * @param lean of both rods at rest, plus when their far ends lie closer together, rad
     */
    record Rods(double setBack, double restLead, double restTilt, double lean) {
        static Rods of(Bar bar) {
            return new Rods(
                    bar.stance().pinSetBack(),
                    bar.stance().restLead(),
                    Math.atan(bar.stance().restLead() / bar.clevisSpacing()),
                    bar.rodLean());
        }

        boolean keepShare() {
            return setBack == 0 && lean == 0;
        }

        /**
         * How much further (m) a clevis travels than its piston when the bar turns to a tilt (rad): a leaning rod swings as
         * its clevis moves sideways. First order in the lean; consistent with the rods' arms by virtual work.
         *
         * @param arm from the bearing to the clevis along the bar, m
         * @param ahead plus 1 for the front clevis, minus 1 for the rear one
         */
        double swing(double tilt, double arm, int ahead) {
            double shortened = Math.cos(tilt) - Math.cos(restTilt);
            double shifted = Math.sin(tilt) - Math.sin(restTilt);
            return Math.tan(lean) * (arm * shortened + ahead * setBack * shifted);
        }
    }

    /**
     * Where bar and pistons end.
     *
     * @param tilt of the bar, rad
     * @param frontStroke m
     * @param rearStroke m
     */
    record Limits(double tilt, double frontStroke, double rearStroke) {}

    static TwinChain of(ResolvedApply.Twin twin, Feeds toFront, Feeds toRear) {
        Bar bar = twin.bar();
        return new TwinChain(
                new BalanceBar(bar.clevisSpacing(), bar.offset()),
                Rods.of(bar),
                Piston.of(twin.front(), twin.front().lostStroke(), toFront),
                Piston.of(twin.rear(), twin.rear().lostStroke(), toRear),
                new Limits(bar.tiltLimit(), twin.front().stroke(), twin.rear().stroke()));
    }

    @Override
    public ApplyState at(double thrust) {
        if (rods.keepShare()) {
            PistonState inFront = front.at(thrust * bar.frontShare());
            PistonState behind = rear.at(thrust * (1 - bar.frontShare()));
            return new ApplyState(
                    inFront,
                    behind,
                    bar.bearingTravel(inFront.stroke(), behind.stroke()),
                    new BarStance(
                            (inFront.stroke() + rods.restLead() - behind.stroke()) / bar.clevisSpacing(),
                            bar.frontShare()));
        }
        double tilt = tilt(thrust);
        double share = share(tilt);
        return state(front.at(thrust * share), rear.at(thrust * (1 - share)), tilt);
    }

    /** What the bar's own tilt would share out differently, or what a piston's spring and pressure leave of its push. */
    @Override
    public double imbalance(ApplyState state) {
        double share = share(
                tilt(state.front().stroke(), state.rear().stroke(), state.bar().tilt()));
        return Math.max(
                Math.abs(share - state.bar().frontShare()),
                Math.max(front.imbalance(state.front()), rear.imbalance(state.rear())));
    }

    @Override
    public DoubleStream bends() {
        double share = share(rods.restTilt());
        return DoubleStream.concat(
                front.bends().map(push -> push / share), rear.bends().map(push -> push / (1 - share)));
    }

    @Override
    public boolean straight() {
        return rods.keepShare() && front.spring().rate() == 0 && rear.spring().rate() == 0;
    }

    @Override
    public ApplyChain unassisted() {
        return this;
    }

    @Override
    public ApplyChain failed(AxleEnd piston) {
        return new FailedTwinChain(this, piston);
    }

    @Override
    public TwinChain aired(AxleEnd piston, double share) {
        return piston == AxleEnd.FRONT
                ? new TwinChain(bar, rods, front.aired(share), rear, limits)
                : new TwinChain(bar, rods, front, rear.aired(share), limits);
    }

    @Override
    public double rodTravelPerStroke(AxleEnd piston) {
        return piston == AxleEnd.FRONT ? bar.frontShare() : 1 - bar.frontShare();
    }

    /** Front share (0 to 1) at a tilt (rad). */
    double share(double tilt) {
        double share = bar.frontShare(new BarAttitude(tilt, rods.setBack(), rods.lean(), rods.lean()));
        return Math.max(0, Math.min(1, share));
    }

    /** Tilt (rad) that the clevises have with the pistons where they are; rods swing as at a tilt (rad). */
    double tilt(double frontStroke, double rearStroke, double swungAt) {
        return bar.tilt(frontStroke + frontClevisAhead(swungAt), rearStroke + rearClevisAhead(swungAt));
    }

    /** Travel (m) of the bearing: the mean of both clevises by the bar's arms, and what set-back pins add when it turns. */
    double bearingTravel(double frontStroke, double rearStroke, double tilt) {
        double turned = Math.cos(tilt) - Math.cos(rods.restTilt());
        return bar.bearingTravel(
                        frontStroke + frontClevisAhead(tilt) - rods.restLead(), rearStroke + rearClevisAhead(tilt))
                + rods.setBack() * turned;
    }

    /** How far (m) the front clevis stands ahead of its piston's stroke: by its lead at rest and as its rod swings. */
    double frontClevisAhead(double tilt) {
        return rods.restLead() + rods.swing(tilt, bar.clevisSpacing() / 2 - bar.offset(), 1);
    }

    /** The same of the rear clevis, which has no lead. */
    double rearClevisAhead(double tilt) {
        return rods.swing(tilt, bar.clevisSpacing() / 2 + bar.offset(), -1);
    }

    private ApplyState state(PistonState inFront, PistonState behind, double tilt) {
        return new ApplyState(
                inFront,
                behind,
                bearingTravel(inFront.stroke(), behind.stroke(), tilt),
                new BarStance(Math.tan(tilt), share(tilt)));
    }

    private double tilt(double thrust) {
        double first = rods.restTilt();
        double second = first - excess(thrust, first);
        return Crossing.rising(tilt -> excess(thrust, tilt), TILTS, first, second);
    }

    /** How far a tilt (rad) lies beyond the one that its own shares and strokes give. */
    private double excess(double thrust, double tilt) {
        double share = share(tilt);
        double frontStroke = front.at(thrust * share).stroke();
        double rearStroke = rear.at(thrust * (1 - share)).stroke();
        return tilt - tilt(frontStroke, rearStroke, tilt);
    }
}
