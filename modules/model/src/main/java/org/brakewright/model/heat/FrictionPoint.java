package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TEMPERATURE;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** One point of a lining's friction against temperature, as written. */
public record FrictionPoint(
        @Asked(
                label = "temperature of the disc or drum",
                dimension = TEMPERATURE,
                least = 223.15,
                most = 1323.15,
                why = "curves of linings lie within this")
        @Required("From the maker's curve.")
        Given temperature,

        @Asked(
                label = "friction at that temperature",
                dimension = RATIO,
                least = 0.02,
                most = 0.9,
                why = "no lining is outside this")
        @Required("From the maker's curve.")
        Given friction) {}
