package org.brakewright.analysis.hydraulics;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.brakewright.kernel.hydraulics.MasterCylinder;
import org.brakewright.kernel.hydraulics.ProportioningValve;
import org.brakewright.kernel.hydraulics.VacuumBooster;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Valve;

/** From the force on the masters' side of the pedal to the pressures at the wheels, quasi-static. */
public sealed interface ApplyChain {

    /** Pressures for a push (N) at the balance bar's bearing or at the booster's rod. */
    LinePressures at(double rodForce);

    /** Pushes (N) at the rod at which a spring, a threshold pressure (Pa), the booster or the valve sets in or ends. */
    double[] bends(double frontThreshold, double rearThreshold);

    /** The same car without its booster's help; itself when there is none. */
    ApplyChain unassisted();

    /** The chain of a build's apply system. */
    static ApplyChain of(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin ->
                new Twin(
                        new BalanceBar(twin.bar().clevisSpacing(), twin.bar().offset()).frontShare(),
                        law(twin.front()),
                        law(twin.rear()),
                        twin.valve().map(ApplyChain::law));
            case ResolvedApply.Tandem tandem ->
                new Tandem(
                        tandem.booster().map(ApplyChain::law),
                        law(tandem.master()),
                        tandem.valve().map(ApplyChain::law));
        };
    }

    /**
     * Two masters under a balance bar.
     *
     * @param frontShare of the push
     * @param front law of the front master
     * @param rear law of the rear master
     * @param valve in the rear line
     */
    record Twin(double frontShare, MasterCylinder front, MasterCylinder rear, Optional<ProportioningValve> valve)
            implements ApplyChain {
        @Override
        public LinePressures at(double rodForce) {
            double rearPressure = rear.pressure(rodForce * (1 - frontShare));
            return new LinePressures(front.pressure(rodForce * frontShare), behind(valve, rearPressure), rearPressure);
        }

        @Override
        public double[] bends(double frontThreshold, double rearThreshold) {
            return DoubleStream.concat(
                            DoubleStream.of(front.push(0), front.push(frontThreshold))
                                    .map(push -> push / frontShare),
                            rearPressures(valve, rearThreshold).map(pressure -> rear.push(pressure) / (1 - frontShare)))
                    .toArray();
        }

        @Override
        public ApplyChain unassisted() {
            return this;
        }
    }

    /**
     * Tandem master: both chambers see the same pressure but for the floating piston's friction, which is neglected.
     *
     * @param booster when there is one and it works
     * @param master law of both chambers
     * @param valve in the rear line
     */
    record Tandem(Optional<VacuumBooster> booster, MasterCylinder master, Optional<ProportioningValve> valve)
            implements ApplyChain {
        @Override
        public LinePressures at(double rodForce) {
            double push = booster.isPresent() ? booster.get().output(rodForce) : rodForce;
            double pressure = master.pressure(push);
            return new LinePressures(pressure, behind(valve, pressure), pressure);
        }

        @Override
        public double[] bends(double frontThreshold, double rearThreshold) {
            DoubleStream pushes = DoubleStream.concat(
                            DoubleStream.of(0, frontThreshold), rearPressures(valve, rearThreshold))
                    .map(master::push);
            return booster.map(boost -> DoubleStream.concat(
                            pushes.map(boost::input), DoubleStream.of(boost.crackInForce(), boost.runOutInput())))
                    .orElse(pushes)
                    .toArray();
        }

        @Override
        public ApplyChain unassisted() {
            return booster.isPresent() ? new Tandem(Optional.empty(), master, valve) : this;
        }
    }

    /** Pressures in front of the valve at which the rear master, the rear brakes or the valve set in. */
    private static DoubleStream rearPressures(Optional<ProportioningValve> valve, double rearThreshold) {
        if (valve.isEmpty()) {
            return DoubleStream.of(0, rearThreshold);
        }
        DoubleStream known = DoubleStream.of(0, valve.get().kneePressure());
        return DoubleStream.concat(known, valve.get().inlet(rearThreshold).stream());
    }

    private static double behind(Optional<ProportioningValve> valve, double inlet) {
        return valve.isPresent() ? valve.get().outlet(inlet) : inlet;
    }

    private static MasterCylinder law(Master master) {
        return new MasterCylinder(master.area(), master.springForce(), 1.0);
    }

    private static ProportioningValve law(Valve valve) {
        return new ProportioningValve(valve.knee(), valve.slope());
    }

    private static VacuumBooster law(Boost boost) {
        return new VacuumBooster(
                boost.crackInForce(), boost.ratio(), boost.diaphragmArea(), boost.vacuum(), boost.efficiency());
    }
}
