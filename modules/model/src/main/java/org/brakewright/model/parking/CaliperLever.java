package org.brakewright.model.parking;

import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A lever on the caliper that presses the pads by a cam or screw, as written; a mechanical caliper of its own counts too. */
@Kind("caliper_lever")
public record CaliperLever(
        @Asked(
                label = "force on the pads over cable pull",
                dimension = RATIO,
                least = 1.0,
                most = 60.0,
                why = "lever times cam or screw of a caliper lies within this")
        @Required("Travel of the cable hook divided by travel of the pad piston, caliper in a vice.")
        Given padForceRatio,

        @Asked(
                label = "pad friction standing still",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no pad is outside this, hot or wet")
        @Nullable
        Given padFriction)
        implements ParkedBrake {}
