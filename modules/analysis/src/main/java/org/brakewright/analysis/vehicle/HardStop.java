package org.brakewright.analysis.vehicle;

import java.util.List;
import org.brakewright.analysis.pedal.TravelShare;

/**
 * The hard stop of the heaviest load case.
 *
 * @param loadCase its name
 * @param point the whole car at that deceleration
 * @param frontShare front brake force over all brake force
 * @param idealFrontShare front load over all load at that deceleration
 * @param reserveM pedal travel left; negative when the pedal would go through its stop
 * @param reserveShare of the travel to the stop
 * @param frontStrokeLeftM of the front master or chamber
 * @param frontStrokeLeftShare of its stroke
 * @param rearStrokeLeftM of the rear master or chamber
 * @param rearStrokeLeftShare of its stroke
 * @param travelBudget pedal travel by cause, largest first
 */
public record HardStop(
        String loadCase,
        OperatingPoint point,
        double frontShare,
        double idealFrontShare,
        double reserveM,
        double reserveShare,
        double frontStrokeLeftM,
        double frontStrokeLeftShare,
        double rearStrokeLeftM,
        double rearStrokeLeftShare,
        List<TravelShare> travelBudget) {}
