package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A single master cylinder as written. */
public record MasterCylinder(
        @Asked(
                label = "bore",
                dimension = LENGTH,
                least = 0.008,
                most = 0.06,
                why = "car master cylinders lie within this",
                how = "Cast or stamped on the body, often as a fraction of an inch.")
        @Required("Cast or stamped on the body, often as a fraction of an inch.")
        Given bore,

        @Asked(
                label = "stroke",
                dimension = LENGTH,
                least = 0.005,
                most = 0.08,
                why = "car master cylinders lie within this",
                how = "Push the piston dry to the end and measure.")
        @Nullable
        Given stroke,

        @Asked(
                label = "lost stroke until the port closes",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "more than 10 mm means the piston does not come home")
        @Nullable
        Given lostStroke,

        @Asked(
                label = "return spring force",
                dimension = FORCE,
                least = 0.0,
                most = 1000.0,
                why = "a return spring only brings the piston home")
        @Nullable
        Given springForce,

        @Asked(
                label = "return spring rate",
                dimension = STIFFNESS,
                least = 0.0,
                most = 5.0e4,
                why = "a return spring only brings the piston home")
        @Nullable
        Given springRate,

        @Asked(
                label = "friction of the seals",
                dimension = FORCE,
                least = 0.0,
                most = 500.0,
                why = "seals that drag more have failed",
                how = "Only if measured apart: the pedal's efficiency already holds the usual friction.")
        @Nullable
        Given sealFriction,

        @Asked(
                label = "rated pressure",
                dimension = PRESSURE,
                least = 1.0e6,
                most = 40.0e6,
                why = "ratings of car master cylinders lie within this",
                how = "From the part sheet.")
        @Nullable
        Given ratedPressure) {}
