package org.brakewright.model.heat;

import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A file that a logger wrote, as named in the build file. */
public record LogFile(
        @Label(
                value = "name of the log file",
                how = "A CSV file in the folder of the build file, or in a folder there.")
        @Required("The CSV file beside the build file, such as hill.csv.")
        String name,

        @Label(
                value = "column of the time",
                how = "Its heading without the unit; time unless given. The unit stands behind it: time [s].")
        @Nullable
        String timeColumn,

        @Label(
                value = "column of the speed",
                how = "Its heading without the unit; speed unless given. The unit stands behind it: speed [km/h].")
        @Nullable
        String speedColumn) {}
