package org.brakewright.analysis.hydraulics;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.hydraulics.Piston.Feeds;
import org.brakewright.kernel.hydraulics.VacuumBooster;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * A tandem master: the push carries through both chambers, each of which gives its own stroke. An open chamber's piston
 * runs to its end and passes the push on, metal on metal.
 *
 * @param booster when there is one and it works
 * @param front chamber that fills the front, or the left front wheel
 * @param rear the other chamber
 * @param ends where a chamber bottoms whose circuit is open
 */
record TandemChain(Optional<VacuumBooster> booster, Piston front, Piston rear, Ends ends) implements ApplyChain {

    /**
     * Where the chambers bottom.
     *
     * @param front stroke, m
     * @param rear stroke, m
     */
    record Ends(double front, double rear) {}

    static TandemChain of(ResolvedApply.Tandem tandem, Feeds toFront, Feeds toRear) {
        double lost = tandem.master().lostStroke() / 2;
        return new TandemChain(
                tandem.booster().map(TandemChain::law),
                Piston.of(tandem.master(), lost, toFront),
                Piston.of(tandem.master(), lost, toRear),
                new Ends(Strokes.front(tandem), Strokes.rear(tandem)));
    }

    @Override
    public ApplyState at(double thrust) {
        double push = booster.isPresent() ? booster.get().output(thrust) : thrust;
        PistonState inFront = at(push, front, ends.front());
        PistonState behind = at(push, rear, ends.rear());
        return new ApplyState(inFront, behind, inFront.stroke() + behind.stroke(), ApplyState.BarStance.NONE);
    }

    @Override
    public double imbalance(ApplyState state) {
        return Math.max(imbalance(front, state.front()), imbalance(rear, state.rear()));
    }

    private static PistonState at(double push, Piston chamber, double end) {
        return chamber.feeds().isEmpty() ? new PistonState(push, 0, end) : chamber.at(push);
    }

    private static double imbalance(Piston chamber, PistonState state) {
        return chamber.feeds().isEmpty() ? 0 : chamber.imbalance(state);
    }

    @Override
    public DoubleStream bends() {
        DoubleStream pushes = DoubleStream.concat(bends(front), bends(rear));
        return booster.map(boost -> DoubleStream.concat(
                        pushes.map(boost::input), DoubleStream.of(boost.crackInForce(), boost.runOutInput())))
                .orElse(pushes);
    }

    private static DoubleStream bends(Piston chamber) {
        return chamber.feeds().isEmpty() ? DoubleStream.empty() : chamber.bends();
    }

    @Override
    public OptionalDouble runOut() {
        return booster.isPresent() ? OptionalDouble.of(booster.get().runOutInput()) : OptionalDouble.empty();
    }

    @Override
    public boolean straight() {
        return front.spring().rate() == 0;
    }

    @Override
    public ApplyChain unassisted() {
        return new TandemChain(Optional.empty(), front, rear, ends);
    }

    @Override
    public ApplyChain failed(AxleEnd piston) {
        return piston == AxleEnd.FRONT
                ? new TandemChain(booster, front.opened(), rear, ends)
                : new TandemChain(booster, front, rear.opened(), ends);
    }

    @Override
    public ApplyChain aired(AxleEnd piston, double share) {
        return piston == AxleEnd.FRONT
                ? new TandemChain(booster, front.aired(share), rear, ends)
                : new TandemChain(booster, front, rear.aired(share), ends);
    }

    @Override
    public double rodTravelPerStroke(AxleEnd piston) {
        return 1;
    }

    private static VacuumBooster law(Boost boost) {
        return new VacuumBooster(
                boost.crackInForce(), boost.ratio(), boost.diaphragmArea(), boost.vacuum(), boost.efficiency());
    }
}
