package org.brakewright.model.mount;

import java.util.List;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The structure that carries pivot and masters. Lengths from a zero that the builder marks on the panel. */
public record Mount(
        @Label("panel") @Required("The sheet that the bracket is bolted to.")
        Panel panel,

        @Label(
                value = "where the panel's zero lies in the car",
                how = "From the zero of lines and footwell; without it the mount is drawn on its own.")
        @Nullable
        Place placeInCar,

        @Label(value = "patches", how = "Fields of the panel that were cut out and replaced.") @Nullable
        List<Patch> patches,

        @Label(value = "doublers", how = "Sheets laid on the panel.") @Nullable
        List<Doubler> doublers,

        @Label("pivot of the pedal") @Required("The middle of its bearing.")
        Place pivot,

        @Label("brackets") @Required("One that carries pivot and masters, or one for each.")
        List<Bracket> brackets,

        @Label(value = "stringers", how = "Bars from panel or bracket to the body.") @Nullable
        List<Stringer> stringers,

        @Label(value = "cross tube", how = "A tube across the car behind the dash.") @Nullable
        CrossTube crossTube,

        @Label("pedal arm") @Required("Its cross-section and material.")
        Arm arm,

        @Label(value = "loads", how = "What it is asked to carry.") @Nullable
        MountLoads loads,

        @Label(value = "own materials", how = "Only for what is not known here.") @Nullable
        List<OwnMaterial> materials,

        @Label(value = "measured push", how = "From the sheet \"Push and measure\"; it proves what was computed.")
        @Nullable
        Measured measured) {}
