package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.PRESSURE;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** A metering (hold-off) valve in the line to the front discs, as written. */
public record MeteringValve(
        @Asked(
                label = "pressure at which the valve opens",
                dimension = PRESSURE,
                least = 0.0,
                most = 5.0e6,
                why = "a valve that opens later than 5 MPa leaves the front without brakes in common stops")
        @Required("From the part sheet or a gauge pair: up to here the front gets nothing.")
        Given opening,

        @Asked(
                label = "pressure from which the valve is fully open",
                dimension = PRESSURE,
                least = 1.0e5,
                most = 10.0e6,
                why = "a valve that never opens fully is a fault")
        @Required("From the part sheet or a gauge pair: from here the front gets all of the pressure.")
        Given blend) {}
