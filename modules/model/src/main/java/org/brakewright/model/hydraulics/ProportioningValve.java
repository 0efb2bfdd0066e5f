package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** A proportioning valve in the rear line, as written. */
public record ProportioningValve(
        @Asked(
                label = "knee pressure",
                dimension = PRESSURE,
                least = 0.0,
                most = 20.0e6,
                why = "a knee above 20 MPa never acts")
        @Required("Pressure up to which the rear gets the same as the front, from the part sheet or a gauge pair.")
        Given knee,

        @Asked(
                label = "slope above the knee",
                dimension = RATIO,
                least = 0.0,
                most = 1.0,
                why = "a slope over 1 would raise the rear pressure above the front's")
        @Required("Rise of the rear pressure over rise of the front pressure above the knee.")
        Given slope,

        @Label(value = "line the valve sits in", how = "rear unless somebody put it elsewhere: follow the tube.")
        @Nullable
        AxleEnd line,

        @Label(value = "adjustable", how = "yes when a knob or screw sets the knee.") @Nullable
        Boolean adjustable) {}
