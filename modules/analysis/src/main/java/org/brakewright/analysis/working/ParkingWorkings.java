package org.brakewright.analysis.working;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.parking.GradeHeld;
import org.brakewright.analysis.parking.ParkedCase;
import org.brakewright.analysis.parking.ParkedWay;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.working.Step.Operand;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedParking;
import org.brakewright.model.vehicle.AxleEnd;

/** Opens the grade that the parking brake holds in its worst load case; the worse way comes last. */
final class ParkingWorkings {
    private final List<Step> steps = new ArrayList<>();
    private final ResolvedBuild build;
    private final ResolvedParking parking;
    private final ParkingState state;
    private final AxleLoads loads;

    private ParkingWorkings(ResolvedBuild build, ResolvedParking parking, ParkingState state, ResolvedLoadCase worst) {
        this.build = build;
        this.parking = parking;
        this.state = state;
        this.loads = Loads.of(build.car(), worst);
    }

    static void add(ResolvedBuild build, ResolvedParking parking, ParkingState state, List<Working> workings) {
        ParkedCase worst = state.loadCases().stream()
                .min(Comparator.comparingDouble(ParkedCase::leastGrade))
                .orElseThrow();
        ResolvedLoadCase loadCase =
                build.car().loadCases().get(state.loadCases().indexOf(worst));
        List<Step> steps = new ParkingWorkings(build, parking, state, loadCase).open(worst);
        workings.add(new Working("parking_hold", steps));
    }

    private List<Step> open(ParkedCase worst) {
        lever();
        if (worst.noseUp().grade() > worst.noseDown().grade()) {
            up(worst.noseUp());
            down(worst.noseDown());
        } else {
            down(worst.noseDown());
            up(worst.noseUp());
        }
        return List.copyOf(steps);
    }

    private void lever() {
        put(
                "cable_pull",
                "each wheel",
                List.of(
                        new Operand("F", state.driverForceN(), FORCE),
                        new Operand("k", parking.leverRatio(), RATIO),
                        new Operand("eta", parking.cableEfficiency(), RATIO)),
                new Operand("", state.cablePullN(), FORCE));
        put(
                "wheel_lever",
                "each wheel",
                List.of(
                        new Operand("F_c", state.cablePullN(), FORCE),
                        new Operand("w", parking.wheelLeverRatio(), RATIO)),
                new Operand("", state.applyForceN(), FORCE));
    }

    private void up(GradeHeld held) {
        way("nose up", state.noseUp(), held, parking.axle() == AxleEnd.REAR);
    }

    private void down(GradeHeld held) {
        way("nose down", state.noseDown(), held, parking.axle() == AxleEnd.FRONT);
    }

    private void way(String place, ParkedWay way, GradeHeld held, boolean pressedDown) {
        double tyre = parking.axle() == AxleEnd.FRONT
                ? build.car().frontTyreRadius()
                : build.car().rearTyreRadius();
        put(
                "parking_torque",
                place,
                List.of(
                        new Operand("C*", way.brakeFactor(), RATIO),
                        new Operand("F_a", state.applyForceN(), FORCE),
                        new Operand("r_b", parking.radius(), LENGTH)),
                new Operand("", way.torqueNM(), TORQUE));
        put(
                "parking_force",
                place,
                List.of(new Operand("T", way.torqueNM(), TORQUE), new Operand("r", tyre, LENGTH)),
                new Operand("", way.brakeForceN(), FORCE));
        put(
                held.gripLimited() ? (pressedDown ? "grade_by_grip_lower" : "grade_by_grip_upper") : "grade_by_force",
                place,
                held.gripLimited() ? grip() : List.of(force(way), new Operand("W", loads.weight(), FORCE)),
                new Operand("", held.grade(), RATIO));
    }

    private static Operand force(ParkedWay way) {
        return new Operand("F_b", way.brakeForceN(), FORCE);
    }

    private List<Operand> grip() {
        double axle = parking.axle() == AxleEnd.FRONT ? loads.frontStatic() : loads.rearStatic();
        return List.of(
                new Operand("mu", build.car().grip(), RATIO),
                new Operand("N", axle, FORCE),
                new Operand("W", loads.weight(), FORCE),
                new Operand("h", loads.cgHeight(), LENGTH),
                new Operand("L", loads.wheelbase(), LENGTH));
    }

    private void put(String law, String place, List<Operand> operands, Operand result) {
        steps.add(new Step(law, place, operands, result.value(), result.dimension()));
    }
}
