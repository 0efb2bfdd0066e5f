package org.brakewright.analysis.parking;

import java.util.List;
import org.brakewright.model.parking.Control;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The parking brake.
 *
 * @param control what the driver works it with
 * @param axle whose wheels it holds
 * @param driverForceN given or assumed
 * @param leverRatio of the control
 * @param cablePullN at each wheel
 * @param applyForceN on each shoe or pad
 * @param noseUp held against rolling backward
 * @param noseDown held against rolling forward
 * @param loadCases what that holds, one a load case
 */
public record ParkingState(
        Control control,
        AxleEnd axle,
        double driverForceN,
        double leverRatio,
        double cablePullN,
        double applyForceN,
        ParkedWay noseUp,
        ParkedWay noseDown,
        List<ParkedCase> loadCases) {

    /** Least lever ratio, all else as it is, at which a force of the driver does what takes another one now; both N. */
    public double leverRatioFor(double allowed, double takenNow) {
        return leverRatio * takenNow / allowed;
    }
}
