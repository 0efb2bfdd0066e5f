package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The pedal arm; with pedal.mechanism or pedal.linkage pad, pin and the rod's far end are known from there. */
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

        @Asked(
                label = "lean of the arm from plumb",
                dimension = ANGLE,
                least = -3.2,
                most = 3.2,
                why = "that is all round",
                how =
                        "Only with pedal.linkage, pedal at rest: from hanging straight down, plus when the pad is further forward; 180 deg stands straight up.")
        @Nullable
        Given lean,

        @Label(value = "pad centre", how = "Pedal at rest; only with pedal.ratio.") @Nullable
        Place pad,

        @Label(value = "pushrod pin", how = "Or the bearing of the balance bar; only with pedal.ratio.") @Nullable
        Place pin,

        @Label(value = "rod's far end", how = "Where the rod sits in the piston; only with pedal.ratio.") @Nullable
        Place socket) {}
