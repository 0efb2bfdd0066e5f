package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.SPEED;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Enclosed;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/**
 * A speed log recorded on the road, its points in the build file or in a file of the logger; the car is taken in gear,
 * and brakes do what air and engine do not.
 */
@Kind("speed_log")
public record SpeedLog(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Label(value = "points of the log", how = "A point each second or at each bend; or name a file instead.")
        @Nullable
        List<SpeedPoint> points,

        @Label(value = "file of the log", how = "What the logger wrote, as CSV; or write points instead.") @Nullable
        LogFile file,

        @Asked(
                label = "error of the logged speed",
                dimension = SPEED,
                least = 0.0,
                most = 2.0,
                why = "a logger that is further off tells nothing about brakes",
                how = "Bends of the log smaller than this are taken as noise; 0 takes every point as true.")
        @Nullable
        Given noise,

        @Enclosed @Nullable Recording recording)
        implements Schedule {}
