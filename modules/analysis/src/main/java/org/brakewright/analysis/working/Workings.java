package org.brakewright.analysis.working;

import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.AREA;
import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.analysis.working.Step.Operand;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.quantity.Dimension;

/** Opens the headline results of a build. */
public final class Workings {
    private final ResolvedBuild build;
    private final HardStop stop;
    private final OperatingPoint point;

    private Workings(ResolvedBuild build, HardStop stop) {
        this.build = build;
        this.stop = stop;
        this.point = stop.point();
    }

    /** Every headline result that there is. */
    public static List<Working> of(ResolvedBuild build, Analysis analysis) {
        List<Working> workings = new ArrayList<>();
        HardStop stop = analysis.hardStop();
        if (stop != null) {
            Workings open = new Workings(build, stop);
            workings.add(new Working("effort", open.effort()));
            workings.add(new Working("travel", open.travel()));
            workings.add(new Working("balance", open.balance()));
        }
        margin(build, analysis, workings);
        DrumWorkings.add(build, workings);
        ParkingState parked = analysis.parking();
        if (parked != null) {
            build.parking().ifPresent(parking -> ParkingWorkings.add(build, parking, parked, workings));
        }
        return List.copyOf(workings);
    }

    private List<Step> effort() {
        List<Step> steps = new ArrayList<>();
        double mass = build.car().heaviest().mass();
        double wanted = point.decelerationG() * Gravity.STANDARD;
        steps.add(step(
                "brake_force_wanted", "", mass * wanted, FORCE, of("m", mass, MASS), of("a", wanted, ACCELERATION)));
        double rod = point.pedalForceN() * build.pedal().ratio() * build.pedal().efficiency();
        steps.add(step(
                "pedal_lever",
                "",
                rod,
                FORCE,
                of("F", point.pedalForceN(), FORCE),
                of("R", build.pedal().ratio(), RATIO),
                of("eta", build.pedal().efficiency(), RATIO)));
        apply(steps, rod);
        steps.add(brake(
                "front", build.front(), point.frontPressurePa(), build.car().frontTyreRadius(), point.frontForceN()));
        steps.add(
                brake("rear", build.rear(), point.rearPressurePa(), build.car().rearTyreRadius(), point.rearForceN()));
        steps.add(step(
                "brake_force_sum",
                "",
                point.frontForceN() + point.rearForceN(),
                FORCE,
                of("F_f", point.frontForceN(), FORCE),
                of("F_r", point.rearForceN(), FORCE)));
        return List.copyOf(steps);
    }

    private void apply(List<Step> steps, double rod) {
        switch (build.apply()) {
            case ResolvedApply.Twin twin -> {
                BalanceBar bar =
                        new BalanceBar(twin.bar().clevisSpacing(), twin.bar().offset());
                steps.add(step(
                        "bar_share",
                        "",
                        bar.frontShare(),
                        RATIO,
                        of("e", twin.bar().offset(), LENGTH),
                        of("w", twin.bar().clevisSpacing(), LENGTH)));
                double front = rod * bar.frontShare();
                steps.add(master("front", front, twin.front()));
                steps.add(master("rear", rod - front, twin.rear()));
            }
            case ResolvedApply.Tandem tandem -> {
                double push = point.frontPressurePa() * tandem.master().area()
                        + tandem.master().springForce();
                tandem.booster()
                        .ifPresent(boost -> steps.add(step(
                                "booster", "", push, FORCE, of("F_in", rod, FORCE), of("G", boost.ratio(), RATIO))));
                steps.add(master("", push, tandem.master()));
            }
        }
        build.apply()
                .valve()
                .ifPresent(valve -> steps.add(step(
                        "proportioning_valve",
                        "rear",
                        point.rearPressurePa(),
                        PRESSURE,
                        of("p_k", valve.knee(), PRESSURE),
                        of("s", valve.slope(), RATIO))));
    }

    private static Step master(String place, double push, Master master) {
        double pressure = Math.max(0, push - master.springForce()) / master.area();
        return step(
                "master_pressure",
                place,
                pressure,
                PRESSURE,
                of("F", push, FORCE),
                of("F_s", master.springForce(), FORCE),
                of("A", master.area(), AREA));
    }

    private static Step brake(String place, ResolvedBrake brake, double pressure, double tyre, double force) {
        return switch (brake) {
            case ResolvedBrake.Disc disc ->
                step(
                        "disc_force",
                        place,
                        force,
                        FORCE,
                        of("mu", disc.friction(), RATIO),
                        of("p", pressure, PRESSURE),
                        of("p_0", disc.thresholdPressure(), PRESSURE),
                        of("A", disc.pistonArea(), AREA),
                        of("r_e", disc.effectiveRadius(), LENGTH),
                        of("r", tyre, LENGTH));
            case ResolvedBrake.Drum drum ->
                step(
                        "drum_force",
                        place,
                        force,
                        FORCE,
                        of("C*", drum.brakeFactor(), RATIO),
                        of("p", pressure, PRESSURE),
                        of("p_0", drum.thresholdPressure(), PRESSURE),
                        of("A", drum.wheelCylinderArea(), AREA),
                        of("r_d", drum.drumRadius(), LENGTH),
                        of("r", tyre, LENGTH));
        };
    }

    private List<Step> travel() {
        List<Operand> shares = new ArrayList<>();
        for (TravelShare share : stop.travelBudget()) {
            if (share.padTravelM() > 0) {
                String where = share.where() == TravelShare.Where.PEDAL
                        ? ""
                        : share.where().name() + " ";
                shares.add(of((where + share.cause().name()).toLowerCase(Locale.ROOT), share.padTravelM(), LENGTH));
            }
        }
        return List.of(new Step("travel_sum", "", List.copyOf(shares), point.pedalTravelM(), LENGTH));
    }

    private List<Step> balance() {
        return List.of(
                step(
                        "front_share",
                        "",
                        stop.frontShare(),
                        RATIO,
                        of("F_f", point.frontForceN(), FORCE),
                        of("F_r", point.rearForceN(), FORCE)),
                step(
                        "ideal_share",
                        "",
                        stop.idealFrontShare(),
                        RATIO,
                        of("m_f", build.car().heaviest().frontMass(), MASS),
                        of("m", build.car().heaviest().mass(), MASS),
                        of("z", point.decelerationG(), RATIO),
                        of("h", build.car().heaviest().cgHeight(), LENGTH),
                        of("L", build.car().wheelbase(), LENGTH)));
    }

    private static void margin(ResolvedBuild build, Analysis analysis, List<Working> workings) {
        for (LoadCaseResult loadCase : analysis.loadCases()) {
            Double critical = loadCase.criticalDecelerationG();
            if (critical != null && critical > 0) {
                workings.add(new Working(
                        "margin",
                        List.of(step(
                                "critical_deceleration",
                                loadCase.name(),
                                critical * Gravity.STANDARD,
                                ACCELERATION,
                                of("N_f", loadCase.frontLoadN(), FORCE),
                                of("N_r", loadCase.rearLoadN(), FORCE),
                                of("h", loadCase.cgHeightM(), LENGTH),
                                of("L", build.car().wheelbase(), LENGTH)))));
            }
        }
    }

    private static Step step(String law, String place, double result, Dimension dimension, Operand... operands) {
        return new Step(law, place, List.of(operands), result, dimension);
    }

    private static Operand of(String symbol, double value, Dimension dimension) {
        return new Operand(symbol, value, dimension);
    }
}
