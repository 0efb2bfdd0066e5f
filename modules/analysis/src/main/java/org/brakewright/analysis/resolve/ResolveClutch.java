package org.brakewright.analysis.resolve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.kernel.clutch.HydraulicRelease;
import org.brakewright.kernel.hydraulics.Bore;
import org.brakewright.model.Given;
import org.brakewright.model.clutch.Bearing;
import org.brakewright.model.clutch.Clearance;
import org.brakewright.model.clutch.Clutch;
import org.brakewright.model.clutch.Concentric;
import org.brakewright.model.clutch.ConstantContact;
import org.brakewright.model.clutch.ForkSlave;
import org.brakewright.model.clutch.OverCentre;
import org.brakewright.model.clutch.PedalSpring;
import org.brakewright.model.clutch.ReleaseLine;
import org.brakewright.model.clutch.ReturnSpring;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.resolved.ResolvedCircuit.Reservoir;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedClutch.Limits;
import org.brakewright.model.resolved.ResolvedClutch.Rest;
import org.brakewright.model.resolved.ResolvedClutch.Slave;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Completes the clutch from its pedal to the release bearing. */
final class ResolveClutch {
    private static final ReleaseLine UNKNOWN_LINE = new ReleaseLine(null, null, null, null, null, null, null);
    private static final Reservoir ANY_RESERVOIR = new Reservoir(OptionalDouble.empty(), OptionalDouble.empty());

    private final Values values;

    ResolveClutch(Values values) {
        this.values = values;
    }

    Optional<ResolvedClutch> clutch(@Nullable Clutch clutch, ResolveLines.Filling filling) {
        return clutch == null ? Optional.empty() : Optional.of(complete(clutch, filling));
    }

    private ResolvedClutch complete(Clutch clutch, ResolveLines.Filling filling) {
        Slave slave = slave(clutch);
        ResolveCover cover = new ResolveCover(values);
        ResolvedClutch.Plate plate = cover.plate(clutch.plate());
        return new ResolvedClutch(
                ResolvePedal.clutch(values).pedal(clutch.pedal()),
                Optional.ofNullable(clutch.pedalSpring()).map(this::spring),
                new ResolveHydraulics(values).master("clutch.master", clutch.master()),
                line(clutch.line() == null ? UNKNOWN_LINE : clutch.line(), filling),
                slave,
                rest(clutch.bearing(), slave.stroke() / slave.forkRatio()),
                cover.cover(clutch, plate),
                plate,
                new Limits(
                        values.maybe(clutch.engineTorque()),
                        values.take(clutch.torqueReserve(), "clutch.torque_reserve", ClutchDefaults.TORQUE_RESERVE),
                        values.take(clutch.mostEffort(), "clutch.most_effort", ClutchDefaults.MOST_EFFORT)));
    }

    private ResolvedClutch.PedalSpring spring(PedalSpring spring) {
        return switch (spring) {
            case ReturnSpring back ->
                new ResolvedClutch.PedalSpring.Return(
                        values.need(back.force()),
                        values.take(back.rate(), "clutch.pedal_spring.rate", ClutchDefaults.RETURN_RATE));
            case OverCentre over -> overCentre(over);
        };
    }

    private ResolvedClutch.PedalSpring overCentre(OverCentre over) {
        double pin = values.need(over.pinRadius());
        double anchor = values.need(over.anchorRadius());
        if (pin == anchor) {
            values.problem(
                    "clutch.pedal_spring.anchor_radius",
                    Values.written(over.anchorRadius()),
                    "Pin and anchor lie equally far from the pivot, so the ends of the spring could meet.",
                    "another radius than pin_radius");
            anchor = 2 * pin;
        }
        return new ResolvedClutch.PedalSpring.OverCentre(
                over.action(),
                values.need(over.springRate()),
                values.need(over.freeLength()),
                pin,
                anchor,
                values.need(over.deadCentre()),
                values.need(over.padArm()));
    }

    private ResolvedCircuit line(ReleaseLine line, ResolveLines.Filling filling) {
        String path = "clutch.line";
        ResolveTube.Section tube = new ResolveTube(values).section(path, line.tubeOutsideDiameter(), line.tubeWall());
        return new ResolvedCircuit(
                values.take(line.tubeLength(), path + ".tube_length", ClutchDefaults.TUBE_LENGTH),
                tube.outside(),
                tube.wall(),
                values.take(line.tubeModulus(), path + ".tube_modulus", Defaults.TUBE_MODULUS),
                values.take(line.hoseLength(), path + ".hose_length", ClutchDefaults.HOSE_LENGTH),
                values.take(line.hoseExpansion(), path + ".hose_expansion", Defaults.HOSE_EXPANSION),
                values.take(line.trappedVolume(), path + ".trapped_volume", ClutchDefaults.TRAPPED_VOLUME),
                filling.bulkModulus(),
                filling.freeAir(),
                OptionalDouble.empty(),
                ANY_RESERVOIR);
    }

    private Slave slave(Clutch clutch) {
        double efficiency =
                values.take(clutch.releaseEfficiency(), "clutch.release_efficiency", ClutchDefaults.RELEASE_EFFICIENCY);
        String stroke = "clutch.slave.stroke";
        return switch (clutch.slave()) {
            case ForkSlave fork ->
                new Slave(
                        false,
                        Bore.area(values.need(fork.bore())),
                        values.take(fork.stroke(), stroke, ClutchDefaults.FORK_SLAVE_STROKE),
                        values.need(fork.forkRatio()),
                        efficiency,
                        1
                                / values.take(
                                        fork.forkStiffness(),
                                        "clutch.slave.fork_stiffness",
                                        ClutchDefaults.FORK_STIFFNESS));
            case Concentric ring ->
                new Slave(
                        true,
                        ring(ring),
                        values.take(ring.stroke(), stroke, ClutchDefaults.CONCENTRIC_STROKE),
                        1,
                        efficiency,
                        0);
        };
    }

    private double ring(Concentric ring) {
        double outer = values.need(ring.outerDiameter());
        double inner = values.need(ring.innerDiameter());
        if (inner < outer) {
            return HydraulicRelease.ring(outer, inner);
        }
        values.problem(
                "clutch.slave.inner_diameter",
                Values.written(ring.innerDiameter()),
                "The inner seal is not smaller than the outer one, so the ring has no area.",
                "less than outer_diameter, " + Values.written(ring.outerDiameter()));
        return Bore.area(outer);
    }

    /** How the bearing stands, by the way (m, at the bearing) that the whole stroke of its slave gives. */
    private Rest rest(Bearing bearing, double way) {
        return switch (bearing) {
            case Clearance stands -> {
                double gap = values.take(stands.gap(), "clutch.bearing.gap", ClutchDefaults.GAP);
                within("clutch.bearing.gap", stands.gap(), gap, way);
                yield new Rest(false, gap, way, gap);
            }
            case ConstantContact rests -> {
                double ahead = values.take(rests.preload(), "clutch.bearing.preload", ClutchDefaults.preload(way));
                within("clutch.bearing.preload", rests.preload(), ahead, way);
                yield new Rest(true, 0, ahead, Math.max(0, way - ahead));
            }
        };
    }

    private void within(String path, @Nullable Given given, double value, double way) {
        if (value > way * (1 + 1e-9)) {
            values.problem(
                    path,
                    Values.written(given),
                    "That is more than the whole stroke of the slave gives at the bearing.",
                    "at most the slave's stroke over the fork ratio, " + QuantityWriter.write(way, Unit.MILLIMETRE));
        }
    }
}
