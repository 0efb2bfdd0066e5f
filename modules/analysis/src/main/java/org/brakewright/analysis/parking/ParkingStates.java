package org.brakewright.analysis.parking;

import java.util.Arrays;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.OneAxleBraked;
import org.brakewright.kernel.friction.GradeHold;
import org.brakewright.kernel.friction.ParkingBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedParking;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Works out what a parking brake holds. */
public final class ParkingStates {
    private static final int WHEELS = 2;

    /** Rise over run: in-service 16 %, approval of one-off cars and older rules 18 %, UN R13-H and FMVSS 135 20 %. */
    private static final double[] RULE_GRADES = {0.16, 0.18, 0.20};

    private final ResolvedCar car;
    private final ResolvedParking parking;
    private final ParkingBrake brake;
    private final double tyreRadius;

    private ParkingStates(ResolvedCar car, ResolvedParking parking) {
        this.car = car;
        this.parking = parking;
        this.brake = brake(parking);
        this.tyreRadius = parking.axle() == AxleEnd.FRONT ? car.frontTyreRadius() : car.rearTyreRadius();
    }

    /** The parking brake of a build; null when none is given. */
    public static @Nullable ParkingState of(ResolvedBuild build) {
        return build.parking()
                .map(parking -> new ParkingStates(build.car(), parking).state())
                .orElse(null);
    }

    /** Lever, cable and wheel lever as a law. */
    public static ParkingBrake brake(ResolvedParking parking) {
        return new ParkingBrake(parking.leverRatio(), parking.cableEfficiency(), parking.wheelLeverRatio(), WHEELS);
    }

    private ParkingState state() {
        ParkedWay up = way(parking.reverseFactor());
        ParkedWay down = way(parking.forwardFactor());
        return new ParkingState(
                parking.control(),
                parking.axle(),
                parking.driverForce(),
                parking.leverRatio(),
                brake.cablePull(parking.driverForce()),
                brake.applyForce(parking.driverForce()),
                up,
                down,
                car.loadCases().stream().map(each -> parked(each, up, down)).toList());
    }

    private ParkedWay way(double factor) {
        double torque = brake.torque(parking.driverForce(), factor, parking.radius());
        return new ParkedWay(factor, torque, WHEELS * torque / tyreRadius);
    }

    private ParkedCase parked(ResolvedLoadCase loadCase, ParkedWay up, ParkedWay down) {
        AxleLoads loads = Loads.of(car, loadCase);
        double gripUp = gripGrade(mirrored(loads), parking.axle() == AxleEnd.REAR);
        double gripDown = gripGrade(loads, parking.axle() == AxleEnd.FRONT);
        double slows = down.brakeForceN() / loads.weight();
        return new ParkedCase(
                loadCase.name(),
                held(loads.weight(), up, gripUp),
                held(loads.weight(), down, gripDown),
                Math.min(slows, gripDown),
                Arrays.stream(RULE_GRADES)
                        .mapToObj(grade -> force(loads.weight(), grade, gripUp, gripDown))
                        .toList());
    }

    /**
     * Grade at which tyres of one held axle slide. On a slope down the loads shift by the tangent as they do in braking by
     * the deceleration over g, so that grade and greatest deceleration are one number.
     */
    private double gripGrade(AxleLoads headingDown, boolean heldAxleLeads) {
        return heldAxleLeads
                ? OneAxleBraked.frontOnly(headingDown, car.grip())
                : OneAxleBraked.rearOnly(headingDown, car.grip());
    }

    /** The car as seen from its tail: nose up, that is what heads down the slope. */
    private static AxleLoads mirrored(AxleLoads loads) {
        return new AxleLoads(
                /* frontStatic= */ loads.rearStatic(),
                /* rearStatic= */ loads.frontStatic(),
                loads.wheelbase(),
                loads.cgHeight());
    }

    private static GradeHeld held(double weight, ParkedWay way, double gripGrade) {
        double grade = Math.tan(GradeHold.steepestAngle(weight, way.brakeForceN()));
        return grade < gripGrade ? new GradeHeld(grade, false) : new GradeHeld(gripGrade, true);
    }

    private ForceForGrade force(double weight, double grade, double gripUp, double gripDown) {
        double torque = GradeHold.onGrade(weight, grade).torquePerWheel(WHEELS, tyreRadius);
        return new ForceForGrade(
                grade,
                grade > gripUp ? null : force(torque, parking.reverseFactor()),
                grade > gripDown ? null : force(torque, parking.forwardFactor()));
    }

    private Double force(double torque, double factor) {
        return brake.leverForceFor(torque, factor, parking.radius());
    }
}
