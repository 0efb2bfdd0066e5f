package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A spring that pulls the pedal back, as felt at the pad. */
@Kind("return_spring")
public record ReturnSpring(
        @Asked(
                label = "force at the pad, pedal up",
                dimension = FORCE,
                least = 0.0,
                most = 200.0,
                why = "a return spring only brings the pedal home",
                how = "Hook a scale to the pad with the pushrod off.")
        @Required("Hook a scale to the pad with the pushrod off.")
        Given force,

        @Asked(
                label = "rise of that force over pad travel",
                dimension = STIFFNESS,
                least = 0.0,
                most = 5000.0,
                why = "a return spring only brings the pedal home",
                how = "Read the scale once more 50 mm further down, and divide.")
        @Nullable
        Given rate)
        implements PedalSpring {}
