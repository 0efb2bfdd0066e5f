package org.brakewright.model.brake;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** Radii between which a pad rubs on the disc, as written. */
public record PadGeometry(
        @Asked(
                label = "inner radius of the rubbed band",
                dimension = LENGTH,
                least = 0.02,
                most = 0.3,
                why = "it lies between hub and rim")
        @Required("Measure the worn band on the disc.")
        Given innerRadius,

        @Asked(
                label = "outer radius of the rubbed band",
                dimension = LENGTH,
                least = 0.03,
                most = 0.3,
                why = "it lies between hub and rim")
        @Required("Measure the worn band on the disc.")
        Given outerRadius,

        @Label(
                value = "pressure over the pad",
                how = "uniform_wear for bedded pads, uniform_pressure for new ones with a stiff back plate.")
        @Required("uniform_wear for bedded pads, uniform_pressure for new ones.")
        PadPressure pressure) {}
