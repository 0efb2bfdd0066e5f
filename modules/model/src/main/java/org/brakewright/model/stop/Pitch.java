package org.brakewright.model.stop;

import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TIME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;

/** The body on its springs, as written. */
public record Pitch(
        @Asked(
                label = "time of one swing of the body",
                dimension = TIME,
                least = 0.1,
                most = 2.0,
                why = "a soft car nods about once a second, a stiff racing car five times")
        @Required("Bounce one end of the car and time ten of its swings, divide by ten.")
        Given period,

        @Asked(
                label = "damping of the pitching",
                dimension = RATIO,
                least = 0.0,
                most = 2.0,
                why = "1 comes back without a swing past rest; worn dampers have 0.1, good ones 0.3 to 0.5")
        @Required("Share of the critical damping; 0.3 with sound dampers.")
        Given damping) {}
