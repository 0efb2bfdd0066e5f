package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TEMPERATURE;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** How hot the brakes may get: what they are made of and what the car is put through, as written. */
public record Heat(
        @Label(value = "front brakes", how = "Discs or drums, pads and calipers as heat sees them.") @Nullable
        BrakeHeat front,

        @Label(value = "rear brakes", how = "Discs or drums, pads and calipers as heat sees them.") @Nullable
        BrakeHeat rear,

        @Asked(
                label = "air temperature",
                dimension = TEMPERATURE,
                least = 233.15,
                most = 333.15,
                why = "it is the air of a day on earth",
                how = "What the brakes are at when a schedule begins.")
        @Nullable
        Given ambient,

        @Asked(
                label = "energy of turning parts over that of the moving car",
                dimension = RATIO,
                least = 0.0,
                most = 0.3,
                why = "wheels, hubs and shafts carry some percent",
                how = "Wheels and tyres about 4 %; 10 % with the engine's parts in a low gear.")
        @Nullable
        Given rotatingShare,

        @Asked(
                label = "speed of driving on to cool",
                dimension = SPEED,
                least = 1.0,
                most = 60.0,
                why = "it is a gentle drive after the schedule",
                how = "How fast you drive on when the brakes are hot.")
        @Nullable
        Given onwardSpeed,

        @Label("schedules")
        @Required("Name at least one thing the car is put through: a stop, snubs, a descent, events or a log.")
        List<Schedule> schedules) {

    /** The same with other schedules. */
    public Heat with(List<Schedule> others) {
        return new Heat(front, rear, ambient, rotatingShare, onwardSpeed, others);
    }
}
