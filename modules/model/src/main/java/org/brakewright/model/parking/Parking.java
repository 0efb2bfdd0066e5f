package org.brakewright.model.parking;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.RATIO;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** The parking brake, as written: one control, one cable with an equaliser, both wheels of one axle. */
public record Parking(
        @Label("control") @Required("hand or foot") Control control,

        @Asked(
                label = "force the driver gives",
                dimension = FORCE,
                least = 50.0,
                most = 1000.0,
                why = "an arm or a leg works within this",
                how = "Pull with a spring scale as hard as the weakest driver would.")
        @Nullable
        Given driverForce,

        @Asked(
                label = "lever ratio",
                dimension = RATIO,
                least = 1.0,
                most = 40.0,
                why = "levers and pedals of parking brakes lie within this")
        @Required("Travel of the grip divided by travel of the cable that goes to the equaliser.")
        Given leverRatio,

        @Asked(
                label = "efficiency of the cable",
                dimension = RATIO,
                least = 0.1,
                most = 1.0,
                why = "a cable gives out less than is put in, and below a tenth it is seized",
                how = "Hang a spring scale at each wheel and compare with the pull at the lever.")
        @Nullable
        Given cableEfficiency,

        @Label("axle it holds") @Required("front or rear") AxleEnd axle,

        @Label("what it acts on")
        @Required(
                "service_shoes: lever and strut in the service drum; drum_in_disc: shoes of its own; caliper_lever: a lever on the caliper.")
        ParkedBrake actsOn) {}
