package org.brakewright.analysis.stop;

import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.dynamics.AirForces;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.LoadSensitiveGrip;
import org.brakewright.kernel.dynamics.SlipCurve;
import org.brakewright.kernel.dynamics.SlippingAxle;
import org.brakewright.kernel.dynamics.SlippingCar;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedStops;

/** Puts a car on wheels that may slip. */
final class SlippingCars {
    private static final int WHEELS = 2;

    private SlippingCars() {}

    static SlippingCar of(ResolvedCar car, ResolvedLoadCase loadCase, ResolvedStops stops, double grip) {
        AxleLoads loads = Loads.of(car, loadCase);
        SlipCurve curve = SlipCurve.of(stops.peakSlip(), stops.slidingShare());
        double sensitivity = car.loadSensitivity().orElse(0);
        return new SlippingCar(
                loads,
                car.aero()
                        .map(aero -> new AirForces(aero.frontDownforce(), aero.rearDownforce(), aero.drag()))
                        .orElse(AirForces.NONE),
                car.aero().map(ResolvedCar.Aero::speed).orElse(1.0),
                new SlippingAxle(
                        car.frontTyreRadius(),
                        WHEELS * stops.frontWheelInertia(),
                        new LoadSensitiveGrip(grip, sensitivity, loads.frontStatic()),
                        curve),
                new SlippingAxle(
                        car.rearTyreRadius(),
                        WHEELS * stops.rearWheelInertia(),
                        new LoadSensitiveGrip(grip, sensitivity, loads.rearStatic()),
                        curve));
    }
}
