package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** One tandem master cylinder for both circuits, with or without booster and valve, as written. */
@Kind("tandem_master")
public record TandemMaster(
        @Asked(
                label = "bore",
                dimension = LENGTH,
                least = 0.008,
                most = 0.06,
                why = "car master cylinders lie within this",
                how = "Cast or stamped on the body, often as a fraction of an inch.")
        @Required("Cast or stamped on the body, often as a fraction of an inch.")
        Given bore,

        @Label(
                value = "split of the circuits",
                how = "front_rear when a chamber feeds one axle, diagonal when it feeds one front and one rear wheel.")
        @Nullable
        CircuitSplit split,

        @Label(
                value = "chamber that feeds the front",
                how = "Look which port the front line comes from: primary is the chamber next to the pushrod.")
        @Required(
                "primary is the chamber next to the pushrod, secondary the far one: follow the front line to its port.")
        Chamber frontFedBy,

        @Asked(
                label = "stroke of the primary chamber",
                dimension = LENGTH,
                least = 0.003,
                most = 0.06,
                why = "car tandem masters lie within this")
        @Nullable
        Given primaryStroke,

        @Asked(
                label = "stroke of the secondary chamber",
                dimension = LENGTH,
                least = 0.003,
                most = 0.06,
                why = "car tandem masters lie within this")
        @Nullable
        Given secondaryStroke,

        @Asked(
                label = "lost stroke of both chambers together",
                dimension = LENGTH,
                least = 0.0,
                most = 0.01,
                why = "more than 10 mm means a piston does not come home")
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
        Given ratedPressure,

        @Label("booster") @Nullable Booster booster,

        @Label("proportioning valve") @Nullable ProportioningValve proportioningValve,

        @Label(
                value = "second proportioning valve",
                how = "One that is still in the car besides the first, for example inside the old junction block.")
        @Nullable
        ProportioningValve secondProportioningValve,

        @Label("metering valve in the front line") @Nullable MeteringValve meteringValve)
        implements ApplySystem {}
