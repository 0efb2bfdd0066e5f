package org.brakewright.model.heat;

import java.util.List;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A speed log recorded on the road; the car is taken in gear, and brakes do what air and engine do not. */
@Kind("speed_log")
public record SpeedLog(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Label(value = "points of the log", how = "Thinned to a point each second or at each bend.")
        @Required("Give at least two points.")
        List<SpeedPoint> points)
        implements Schedule {}
