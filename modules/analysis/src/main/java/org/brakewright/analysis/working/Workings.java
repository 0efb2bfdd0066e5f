package org.brakewright.analysis.working;

import static org.brakewright.analysis.working.Step.operand;
import static org.brakewright.analysis.working.Step.step;
import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.analysis.working.Step.Operand;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedBuild;

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
            workings.add(new Working("effort", EffortWorking.steps(build, stop.point())));
            workings.add(new Working("travel", open.travel()));
            workings.add(new Working("balance", open.balance()));
        }
        margin(build, analysis, workings);
        DrumWorkings.add(build, workings);
        ParkingState parked = analysis.parking();
        if (parked != null) {
            build.parking().ifPresent(parking -> ParkingWorkings.add(build, parking, parked, workings));
        }
        HeatState heat = analysis.heat();
        if (heat != null) {
            build.heat().ifPresent(built -> HeatWorkings.add(build, built, heat, workings));
        }
        ClutchState clutch = analysis.clutch();
        if (clutch != null) {
            build.clutch().ifPresent(built -> ClutchWorkings.add(built, clutch, workings));
        }
        return List.copyOf(workings);
    }

    private List<Step> travel() {
        List<Operand> shares = new ArrayList<>();
        for (TravelShare share : stop.travelBudget()) {
            if (share.padTravelM() > 0) {
                String where = share.where() == TravelShare.Where.PEDAL
                        ? ""
                        : share.where().name() + " ";
                shares.add(
                        operand((where + share.cause().name()).toLowerCase(Locale.ROOT), share.padTravelM(), LENGTH));
            }
        }
        List<Step> steps = new ArrayList<>();
        if (build.pedal().mechanism().isPresent()) {
            meanRatio(Chain.of(build).atPedalForce(point.pedalForceN())).ifPresent(steps::add);
        }
        steps.add(new Step("travel_sum", "", List.copyOf(shares), point.pedalTravelM(), LENGTH));
        return List.copyOf(steps);
    }

    /** What a mechanism makes of rod travel at the pad, over the whole way; empty when the rod does not move. */
    private Optional<Step> meanRatio(Pushed pushed) {
        double padTravel = pushed.lever().padTravel();
        double rodTravel = pushed.apply().rodTravel() + build.pedal().slack();
        return rodTravel <= 0
                ? Optional.empty()
                : Optional.of(step(
                        "linkage_travel",
                        "",
                        padTravel / rodTravel,
                        RATIO,
                        operand("s_p", padTravel, LENGTH),
                        operand("s_r", rodTravel, LENGTH)));
    }

    private List<Step> balance() {
        return List.of(
                step(
                        "front_share",
                        "",
                        stop.frontShare(),
                        RATIO,
                        operand("F_f", point.frontForceN(), FORCE),
                        operand("F_r", point.rearForceN(), FORCE)),
                step(
                        "ideal_share",
                        "",
                        stop.idealFrontShare(),
                        RATIO,
                        operand("m_f", build.car().heaviest().frontMass(), MASS),
                        operand("m", build.car().heaviest().mass(), MASS),
                        operand("z", point.decelerationG(), RATIO),
                        operand("h", build.car().heaviest().cgHeight(), LENGTH),
                        operand("L", build.car().wheelbase(), LENGTH)));
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
                                operand("N_f", loadCase.frontLoadN(), FORCE),
                                operand("N_r", loadCase.rearLoadN(), FORCE),
                                operand("h", loadCase.cgHeightM(), LENGTH),
                                operand("L", build.car().wheelbase(), LENGTH)))));
            }
        }
    }
}
