package org.brakewright.analysis.balance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.dynamics.AirForces;
import org.brakewright.kernel.dynamics.RoadForces;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedCar.EngineBraking;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.vehicle.AxleEnd;

/** Every case in which a car is braked: load, pads, speed, engine. None of them depends on what the foot pushes. */
public final class Cases {
    private Cases() {}

    /**
     * A case and what acts in it.
     *
     * @param name what it is called
     * @param situation what acts
     * @param greatestG greatest deceleration with every wheel at the car's grip, g
     */
    public record Case(CaseName name, Situation situation, double greatestG) {}

    /** The cases of a build; speeds and engine only as far as the builder gave them. */
    public static List<Case> of(ResolvedBuild build) {
        List<Case> cases = new ArrayList<>();
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            for (PadState pads : PadState.values()) {
                for (double speed : speeds(build.car())) {
                    cases.add(of(build, loadCase, new CaseName(loadCase.name(), pads, speed, false)));
                    if (build.car().engineBraking().isPresent()) {
                        cases.add(of(build, loadCase, new CaseName(loadCase.name(), pads, speed, true)));
                    }
                }
            }
        }
        return List.copyOf(cases);
    }

    private static double[] speeds(ResolvedCar car) {
        return car.aero().map(aero -> new double[] {0, aero.speed()}).orElse(new double[] {0});
    }

    private static Case of(ResolvedBuild build, ResolvedLoadCase loadCase, CaseName name) {
        ResolvedCar car = build.car();
        AirForces air = car.aero()
                .filter(aero -> name.speedMS() > 0)
                .map(aero -> new AirForces(aero.frontDownforce(), aero.rearDownforce(), aero.drag()))
                .orElse(AirForces.NONE);
        Situation situation = new Situation(
                new RoadForces(
                        Loads.of(car, loadCase),
                        air,
                        engine(car, name, AxleEnd.FRONT),
                        engine(car, name, AxleEnd.REAR)),
                name.pads().front(build.front().frictionStates()),
                name.pads().rear(build.rear().frictionStates()),
                car.loadSensitivity().orElse(0));
        return new Case(name, situation, situation.greatestG(car.grip()));
    }

    private static double engine(ResolvedCar car, CaseName name, AxleEnd axle) {
        return car.engineBraking()
                .filter(engine -> name.engineBraking() && engine.drivenAxle() == axle)
                .map(EngineBraking::force)
                .orElse(0.0);
    }
}
