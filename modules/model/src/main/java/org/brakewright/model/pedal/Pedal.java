package org.brakewright.model.pedal;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** The brake pedal as written: give the ratio, or the linkage that makes it. */
public record Pedal(
        @Asked(
                label = "pedal ratio",
                dimension = RATIO,
                least = 1.0,
                most = 15.0,
                why = "below 1 the pedal would weaken the foot and above 15 it would run out of travel",
                how = "Pad travel over pushrod travel, both measured with a tape.")
        @Nullable
        Given ratio,

        @Label(value = "linkage", how = "Instead of the ratio: the two arms and the pushrod's angle.") @Nullable
        Linkage linkage,

        @Label(
                value = "mechanism",
                how = "Instead of ratio or linkage: where pad, pins and master lie, for the ratio through the stroke.")
        @Nullable
        Mechanism mechanism,

        @Asked(
                label = "free play at the pad",
                dimension = LENGTH,
                least = 0.0,
                most = 0.05,
                why = "more than 50 mm is a worn or wrong linkage",
                how = "Push with a finger until the pushrod touches the piston.")
        @Nullable
        Given freePlay,

        @Asked(
                label = "pad travel from free position to the stop",
                dimension = LENGTH,
                least = 0.02,
                most = 0.4,
                why = "a pedal moves between 20 and 400 mm",
                how = "Disconnect the pushrod and measure the pad along its arc to the floor or the stop.")
        @Nullable
        Given travelToStop,

        @Asked(
                label = "efficiency from pad to master pistons",
                dimension = RATIO,
                least = 0.3,
                most = 1.0,
                why = "bearings, bar and seals take a part of the force and never add any")
        @Nullable
        Given efficiency,

        @Asked(
                label = "stiffness of the pedal mount at the pad",
                dimension = STIFFNESS,
                least = 1.0e4,
                most = 1.0e8,
                why = "a softer mount is not fit to carry a pedal",
                how =
                        "Push with a scale, read a dial gauge at the master's flange, multiply its movement by the ratio.")
        @Nullable
        Given mountStiffness,

        @Asked(
                label = "stiffness of the pedal arm at the pad",
                dimension = STIFFNESS,
                least = 1.0e4,
                most = 1.0e8,
                why = "a softer arm is not fit to be stepped on",
                how = "Hold the pushrod pin fast, push the pad with a scale and read how far it goes.")
        @Nullable
        Given armStiffness,

        @Asked(
                label = "slack in rods and clevises",
                dimension = LENGTH,
                least = 0.0,
                most = 0.005,
                why = "more than 5 mm is a worn pin",
                how = "Beyond the free play: rock the pushrod against its pins and measure along the rod.")
        @Nullable
        Given slack,

        @Label(value = "pushrod", how = "Thread and clevis of the rod, for the sheet that tells how long to cut it.")
        @Nullable
        Pushrod pushrod) {}
