package org.brakewright.model.pedal;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Two tape measurements and an angle, which give the pedal ratio. */
public record Linkage(
        @Asked(
                label = "pivot to pad centre",
                dimension = LENGTH,
                least = 0.05,
                most = 0.8,
                why = "a foot pedal's arm lies within this")
        @Required("Straight line from the pivot to the middle of the pad.")
        Given padArm,

        @Asked(
                label = "pivot to pushrod pin",
                dimension = LENGTH,
                least = 0.01,
                most = 0.3,
                why = "a shorter arm cannot carry a pin")
        @Required("Straight line from the pivot to the middle of the pushrod pin or balance bar bearing.")
        Given pushrodArm,

        @Asked(
                label = "pushrod angle from square to its arm",
                dimension = ANGLE,
                least = -1.0,
                most = 1.0,
                why = "beyond 57 degrees the rod pushes along the arm, not across it",
                how = "At working load, lay a square on the arm and read how far the rod leans off it.")
        @Nullable
        Given pushrodAngle) {}
