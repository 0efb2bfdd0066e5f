package org.brakewright.analysis.hydraulics;

import java.util.Optional;
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
 * @param open the chamber whose circuit is open, when one is
 * @param end stroke at which that one bottoms, m
 */
record TandemChain(Optional<VacuumBooster> booster, Piston front, Piston rear, Optional<AxleEnd> open, Ends end)
        implements ApplyChain {

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
                Optional.empty(),
                new Ends(Strokes.front(tandem), Strokes.rear(tandem)));
    }

    @Override
    public ApplyState at(double thrust) {
        double push = booster.isPresent() ? booster.get().output(thrust) : thrust;
        PistonState inFront = isOpen(AxleEnd.FRONT) ? new PistonState(push, 0, end.front()) : front.at(push);
        PistonState behind = isOpen(AxleEnd.REAR) ? new PistonState(push, 0, end.rear()) : rear.at(push);
        return new ApplyState(
                inFront,
                behind,
                inFront.stroke() + behind.stroke(),
                ApplyState.BarStance.NONE,
                Math.max(imbalance(AxleEnd.FRONT, front, inFront), imbalance(AxleEnd.REAR, rear, behind)));
    }

    @Override
    public DoubleStream bends() {
        DoubleStream pushes = DoubleStream.concat(
                isOpen(AxleEnd.FRONT) ? DoubleStream.empty() : front.bends(),
                isOpen(AxleEnd.REAR) ? DoubleStream.empty() : rear.bends());
        return booster.map(boost -> DoubleStream.concat(
                        pushes.map(boost::input), DoubleStream.of(boost.crackInForce(), boost.runOutInput())))
                .orElse(pushes);
    }

    @Override
    public boolean straight() {
        return front.spring().rate() == 0;
    }

    @Override
    public ApplyChain unassisted() {
        return new TandemChain(Optional.empty(), front, rear, open, end);
    }

    @Override
    public ApplyChain failed(AxleEnd piston) {
        return piston == AxleEnd.FRONT
                ? new TandemChain(booster, front.opened(), rear, Optional.of(piston), end)
                : new TandemChain(booster, front, rear.opened(), Optional.of(piston), end);
    }

    @Override
    public double rodTravelPerStroke(AxleEnd piston) {
        return 1;
    }

    private boolean isOpen(AxleEnd piston) {
        return open.isPresent() && open.get() == piston;
    }

    private double imbalance(AxleEnd end, Piston piston, PistonState state) {
        return isOpen(end) ? 0 : piston.imbalance(state);
    }

    private static VacuumBooster law(Boost boost) {
        return new VacuumBooster(
                boost.crackInForce(), boost.ratio(), boost.diaphragmArea(), boost.vacuum(), boost.efficiency());
    }
}
