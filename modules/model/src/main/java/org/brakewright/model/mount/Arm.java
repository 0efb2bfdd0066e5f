package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The pedal arm; with pedal.mechanism pad, pin and the rod's far end are known from there. */
public record Arm(
        @Label("cross-section")
        @Required("Its shape and dimensions; the height lies in the plane in which the pedal swings.")
        Profile profile,

        @Label("material") @Required("One of the materials that are known here, or a name from mount.materials.")
        String material,

        @Asked(
                label = "pad to the left of the pivot",
                dimension = LENGTH,
                least = -0.2,
                most = 0.2,
                why = "a pad stands beside its pivot",
                how =
                        "How far the middle of the pad stands to the left of the plane of the pushrod; minus to the right.")
        @Nullable
        Given padOffset,

        @Label(value = "pad centre", how = "Pedal at rest; only without pedal.mechanism.") @Nullable
        Place pad,

        @Label(value = "pushrod pin", how = "Or the bearing of the balance bar; only without pedal.mechanism.")
        @Nullable
        Place pin,

        @Label(value = "rod's far end", how = "Where the rod sits in the piston; only without pedal.mechanism.")
        @Nullable
        Place socket) {}
