package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.kernel.hydraulics.Bore;
import org.brakewright.model.Given;
import org.brakewright.model.hydraulics.ApplySystem;
import org.brakewright.model.hydraulics.BalanceBar;
import org.brakewright.model.hydraulics.Booster;
import org.brakewright.model.hydraulics.Fluid;
import org.brakewright.model.hydraulics.Line;
import org.brakewright.model.hydraulics.MasterCylinder;
import org.brakewright.model.hydraulics.ProportioningValve;
import org.brakewright.model.hydraulics.TandemMaster;
import org.brakewright.model.hydraulics.TwinMasters;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.jspecify.annotations.Nullable;

/** Completes masters, balance bar, booster, valve, lines and fluid. */
final class ResolveHydraulics {
    private static final String KNEE = "apply.proportioning_valve.knee";
    private static final String SLOPE = "apply.proportioning_valve.slope";
    private static final BalanceBar UNKNOWN_BAR = new BalanceBar(null, null, null, null, null, null);
    private static final Line UNKNOWN_LINE = new Line(null, null, null, null, null, null, null);
    private static final Fluid UNKNOWN_FLUID = new Fluid(null, null, null);

    private final Values values;

    ResolveHydraulics(Values values) {
        this.values = values;
    }

    ResolvedApply apply(ApplySystem apply) {
        return switch (apply) {
            case TwinMasters twin ->
                new ResolvedApply.Twin(
                        master("apply.front_master", twin.frontMaster()),
                        master("apply.rear_master", twin.rearMaster()),
                        bar(twin.balanceBar() == null ? UNKNOWN_BAR : twin.balanceBar()),
                        valve(twin.proportioningValve()));
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
                    written(tandem.lostStroke()),
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
                values.maybe(tandem.ratedPressure()));
        return new ResolvedApply.Tandem(
                master,
                tandem.frontFedBy(),
                primary,
                secondary,
                Optional.ofNullable(tandem.booster()).map(this::boost),
                valve(tandem.proportioningValve()));
    }

    private Master master(String path, MasterCylinder master) {
        double bore = values.need(master.bore());
        double stroke = values.take(master.stroke(), path + ".stroke", Defaults.MASTER_STROKE);
        double lost = values.take(master.lostStroke(), path + ".lost_stroke", Defaults.MASTER_LOST_STROKE);
        if (lost >= stroke) {
            values.problem(
                    path + ".lost_stroke",
                    written(master.lostStroke()),
                    "The master loses its whole stroke before the port closes.",
                    "less than the stroke");
        }
        return new Master(
                bore,
                Bore.area(bore),
                stroke,
                lost,
                values.take(master.springForce(), path + ".spring_force", Defaults.MASTER_SPRING),
                values.maybe(master.ratedPressure()));
    }

    private Bar bar(BalanceBar bar) {
        String path = "apply.balance_bar";
        double spacing = values.take(bar.clevisSpacing(), path + ".clevis_spacing", Defaults.CLEVIS_SPACING);
        double offset = values.take(bar.offset(), path + ".offset", Defaults.BAR_OFFSET);
        double limit = values.take(bar.offsetLimit(), path + ".offset_limit", Defaults.offsetLimit(spacing));
        checkOffset(bar, path, spacing, offset, limit);
        return new Bar(
                spacing,
                offset,
                values.take(bar.movementPerTurn(), path + ".movement_per_turn", Defaults.BAR_MOVEMENT_PER_TURN),
                limit,
                values.take(bar.tiltLimit(), path + ".tilt_limit", Defaults.BAR_TILT_LIMIT),
                Optional.ofNullable(bar.lockedForRoad()));
    }

    private void checkOffset(BalanceBar bar, String path, double spacing, double offset, double limit) {
        if (limit >= spacing / 2) {
            values.problem(
                    path + ".offset_limit",
                    written(bar.offsetLimit()),
                    "The bearing cannot move past a clevis.",
                    "less than half the clevis spacing, " + written(bar.clevisSpacing()));
        }
        if (Math.abs(offset) >= spacing / 2) {
            values.problem(
                    path + ".offset",
                    written(bar.offset()),
                    "The bearing lies at or past a clevis, so one master would be pulled.",
                    "less than half the clevis spacing either way, spacing " + written(bar.clevisSpacing()));
        } else if (bar.offsetLimit() != null && Math.abs(offset) > limit * (1 + 1e-9)) {
            values.problem(
                    path + ".offset",
                    written(bar.offset()),
                    "The bearing lies beyond the adjuster's own limit.",
                    "at most offset_limit either way, " + written(bar.offsetLimit()));
        }
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

    private Optional<Valve> valve(@Nullable ProportioningValve valve) {
        if (valve != null) {
            boolean adjustable = Boolean.TRUE.equals(valve.adjustable());
            return Optional.of(new Valve(values.need(valve.knee()), values.need(valve.slope()), adjustable));
        }
        if (values.overridden(KNEE) && values.overridden(SLOPE)) {
            Default never = Default.estimate(0, 0, 0, "");
            return Optional.of(new Valve(values.take(null, KNEE, never), values.take(null, SLOPE, never), true));
        }
        return Optional.empty();
    }

    /**
     * The fluid of both circuits.
     *
     * @param bulkModulus Pa
     * @param freeAir share of the volume
     */
    record Filling(double bulkModulus, double freeAir) {}

    Filling filling(@Nullable Fluid given) {
        Fluid fluid = given == null ? UNKNOWN_FLUID : given;
        return new Filling(
                values.take(fluid.bulkModulus(), "fluid.bulk_modulus", Defaults.bulkModulus(fluid.grade())),
                values.take(fluid.freeAir(), "fluid.free_air", Defaults.FREE_AIR));
    }

    ResolvedCircuit circuit(String end, @Nullable Line given, Filling filling) {
        Line line = given == null ? UNKNOWN_LINE : given;
        String path = "lines." + end;
        double outside =
                values.take(line.tubeOutsideDiameter(), path + ".tube_outside_diameter", Defaults.TUBE_OUTSIDE);
        double wall = values.take(line.tubeWall(), path + ".tube_wall", Defaults.TUBE_WALL);
        if (2 * wall >= outside) {
            values.problem(
                    path + ".tube_wall",
                    written(line.tubeWall()),
                    "The tube's wall leaves no bore.",
                    "less than half the outside diameter");
            wall = outside / 4;
        }
        return new ResolvedCircuit(
                values.take(line.tubeLength(), path + ".tube_length", Defaults.TUBE_LENGTH),
                outside,
                wall,
                values.take(line.tubeModulus(), path + ".tube_modulus", Defaults.TUBE_MODULUS),
                values.take(line.hoseLength(), path + ".hose_length", Defaults.HOSE_LENGTH),
                values.take(line.hoseExpansion(), path + ".hose_expansion", Defaults.HOSE_EXPANSION),
                values.take(line.trappedVolume(), path + ".trapped_volume", Defaults.TRAPPED_VOLUME),
                filling.bulkModulus(),
                filling.freeAir());
    }

    private static String written(@Nullable Given given) {
        return given == null ? "assumed" : given.quantity().written();
    }
}
