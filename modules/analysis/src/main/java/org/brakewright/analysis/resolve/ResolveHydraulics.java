package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.kernel.hydraulics.Bore;
import org.brakewright.model.hydraulics.ApplySystem;
import org.brakewright.model.hydraulics.Booster;
import org.brakewright.model.hydraulics.CircuitSplit;
import org.brakewright.model.hydraulics.MasterCylinder;
import org.brakewright.model.hydraulics.TandemMaster;
import org.brakewright.model.hydraulics.TwinMasters;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;

/** Completes masters and booster, with balance bar and valves. */
final class ResolveHydraulics {
    private final Values values;
    private final ResolveValves valves;

    ResolveHydraulics(Values values) {
        this.values = values;
        this.valves = new ResolveValves(values);
    }

    ResolvedApply apply(ApplySystem apply) {
        return switch (apply) {
            case TwinMasters twin ->
                new ResolvedApply.Twin(
                        master("apply.front_master", twin.frontMaster()),
                        master("apply.rear_master", twin.rearMaster()),
                        new ResolveBar(values).bar(twin.balanceBar()),
                        valves.valves(
                                twin.proportioningValve(), twin.secondProportioningValve(), twin.meteringValve()));
            case TandemMaster tandem -> tandem(tandem);
        };
    }

    private ResolvedApply tandem(TandemMaster tandem) {
        double primary = values.take(tandem.primaryStroke(), "apply.primary_stroke", Defaults.CHAMBER_STROKE);
        double secondary = values.take(tandem.secondaryStroke(), "apply.secondary_stroke", Defaults.CHAMBER_STROKE);
        double lost = values.take(tandem.lostStroke(), "apply.lost_stroke", Defaults.TANDEM_LOST_STROKE);
        if (lost / 2 >= Math.min(primary, secondary)) {
            values.problem(
                    "apply.lost_stroke",
                    Values.written(tandem.lostStroke()),
                    "A chamber loses its whole stroke before its port closes; each loses half of the lost stroke.",
                    "less than twice the shorter chamber's stroke");
        }
        double bore = values.need(tandem.bore());
        Master master = new Master(
                bore,
                Bore.area(bore),
                primary + secondary,
                lost,
                values.take(tandem.springForce(), "apply.spring_force", Defaults.MASTER_SPRING),
                values.take(tandem.springRate(), "apply.spring_rate", Defaults.SPRING_RATE),
                values.take(tandem.sealFriction(), "apply.seal_friction", Defaults.SEAL_FRICTION),
                values.maybe(tandem.ratedPressure()));
        return new ResolvedApply.Tandem(
                master,
                tandem.split() == null ? CircuitSplit.FRONT_REAR : tandem.split(),
                tandem.frontFedBy(),
                primary,
                secondary,
                Optional.ofNullable(tandem.booster()).map(this::boost),
                valves.valves(tandem.proportioningValve(), tandem.secondProportioningValve(), tandem.meteringValve()));
    }

    /** A single master whose keys stand at a path. */
    Master master(String path, MasterCylinder master) {
        double bore = values.need(master.bore());
        double stroke = values.take(master.stroke(), path + ".stroke", Defaults.MASTER_STROKE);
        double lost = values.take(master.lostStroke(), path + ".lost_stroke", Defaults.MASTER_LOST_STROKE);
        if (lost >= stroke) {
            values.problem(
                    path + ".lost_stroke",
                    Values.written(master.lostStroke()),
                    "The master loses its whole stroke before the port closes.",
                    "less than the stroke");
        }
        return new Master(
                bore,
                Bore.area(bore),
                stroke,
                lost,
                values.take(master.springForce(), path + ".spring_force", Defaults.MASTER_SPRING),
                values.take(master.springRate(), path + ".spring_rate", Defaults.SPRING_RATE),
                values.take(master.sealFriction(), path + ".seal_friction", Defaults.SEAL_FRICTION),
                values.maybe(master.ratedPressure()));
    }

    private Boost boost(Booster booster) {
        String path = "apply.booster";
        return new Boost(
                values.need(booster.ratio()),
                Bore.area(values.need(booster.diaphragmDiameter())),
                values.take(booster.vacuum(), path + ".vacuum", Defaults.BOOSTER_VACUUM),
                values.take(booster.crackInForce(), path + ".crack_in_force", Defaults.BOOSTER_CRACK_IN),
                values.take(booster.efficiency(), path + ".efficiency", Defaults.BOOSTER_EFFICIENCY));
    }
}
