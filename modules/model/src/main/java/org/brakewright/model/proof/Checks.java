package org.brakewright.model.proof;

import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** What somebody has looked at on the car: yes, no, or not looked yet (null). A no must never be driven. */
public record Checks(
        @Label(
                value = "pushrods held in their pistons",
                how =
                        "Pull each pushrod back: it must be held by a clip or by a pedal return stop within the piston's recess.")
        @Nullable
        Boolean pushrodsRetained,

        @Label(value = "free play at the pushrods", how = "Rock each pushrod: it must move before the piston does.")
        @Nullable
        Boolean freePlayPresent,

        @Label(
                value = "pedal and bar come back",
                how = "Press hard, let go: pedal and both pistons must come fully home.")
        @Nullable
        Boolean pedalReturns,

        @Label(value = "no leak", how = "Hold a firm push and wipe every joint with dry paper.") @Nullable
        Boolean noLeak,

        @Label(value = "pedal holds", how = "Hold a firm push for ten seconds: the pedal must not sink.") @Nullable
        Boolean pedalHolds,

        @Label(value = "brake lights work", how = "Press lightly and look.") @Nullable
        Boolean brakeLights) {}
