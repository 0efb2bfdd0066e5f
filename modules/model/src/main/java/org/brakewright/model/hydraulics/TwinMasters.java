package org.brakewright.model.hydraulics;

import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Two master cylinders side by side, joined by a balance bar, as written. */
@Kind("twin_masters")
public record TwinMasters(
        @Label("front master cylinder") @Required("State the master that feeds the front brakes.")
        MasterCylinder frontMaster,

        @Label("rear master cylinder") @Required("State the master that feeds the rear brakes.")
        MasterCylinder rearMaster,

        @Label("balance bar") @Nullable BalanceBar balanceBar,

        @Label("proportioning valve") @Nullable ProportioningValve proportioningValve,

        @Label(
                value = "second proportioning valve",
                how = "One that is still in the car besides the first, for example inside the old junction block.")
        @Nullable
        ProportioningValve secondProportioningValve,

        @Label("metering valve in the front line") @Nullable MeteringValve meteringValve)
        implements ApplySystem {}
