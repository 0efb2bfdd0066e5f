package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TIME;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Braking events in the order in which they happen, once or for some laps. */
@Kind("events")
public record BrakingEvents(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Label(value = "braking events", how = "In order; the speed changes evenly in between.")
        @Required("Give at least one event.")
        List<BrakingEvent> events,

        @Asked(
                label = "number of laps",
                dimension = RATIO,
                least = 1.0,
                most = 200.0,
                why = "it is a whole number of laps",
                how = "How often the events are gone through.")
        @Nullable
        Given laps,

        @Asked(
                label = "time of a lap",
                dimension = TIME,
                least = 5.0,
                most = 3600.0,
                why = "it is the time from start line to start line",
                how = "Needed for more than one lap.")
        @Nullable
        Given lapTime)
        implements Schedule {}
