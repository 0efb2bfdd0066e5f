package org.brakewright.model.pedal;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/**
 * The pedal in its own plane, at rest, measured from its pivot: forward is toward the nose of the car, up is up. With a
 * balance bar the pin is the bar's bearing and the socket the mean of both rods' far ends.
 */
public record Mechanism(
        @Label(value = "mount", how = "hung from above, standing on the floor, or reverse: master behind the pedal.")
        @Required("hung, floor or reverse: look where the pivot and the master are.")
        PedalMount mount,

        @Asked(
                label = "pad centre forward of the pivot",
                dimension = LENGTH,
                least = -0.6,
                most = 0.6,
                why = "a pad lies within 600 mm of its pivot")
        @Required("Hang a plumb line from the pivot and measure to the pad's centre; minus when the pad lies behind.")
        Given padForward,

        @Asked(
                label = "pad centre above the pivot",
                dimension = LENGTH,
                least = -0.6,
                most = 0.6,
                why = "a pad lies within 600 mm of its pivot")
        @Required("Height of the pad's centre over the pivot; minus when the pad hangs below.")
        Given padUp,

        @Asked(
                label = "pushrod pin forward of the pivot",
                dimension = LENGTH,
                least = -0.3,
                most = 0.3,
                why = "a pin lies within 300 mm of its pivot")
        @Required("Measure as for the pad, to the pin or to the balance bar's bearing.")
        Given pinForward,

        @Asked(
                label = "pushrod pin above the pivot",
                dimension = LENGTH,
                least = -0.3,
                most = 0.3,
                why = "a pin lies within 300 mm of its pivot")
        @Required("Height of the pin or of the balance bar's bearing over the pivot; minus when below.")
        Given pinUp,

        @Asked(
                label = "rod's far end forward of the pivot",
                dimension = LENGTH,
                least = -0.6,
                most = 0.6,
                why = "a master's piston lies within 600 mm of the pivot")
        @Required("Where the rod's end sits in the piston, master at rest; minus when it lies behind the pivot.")
        Given socketForward,

        @Asked(
                label = "rod's far end above the pivot",
                dimension = LENGTH,
                least = -0.6,
                most = 0.6,
                why = "a master's piston lies within 600 mm of the pivot")
        @Required("Height of the rod's end in the piston over the pivot; minus when below.")
        Given socketUp,

        @Asked(
                label = "rise of the master's axis",
                dimension = ANGLE,
                least = -1.0,
                most = 1.0,
                why = "a master leaning by more than 57 degrees cannot be bled or pushed",
                how = "Lay an angle gauge on the master: plus when the end away from the pedal is the higher one.")
        @Nullable
        Given axisRise) {}
