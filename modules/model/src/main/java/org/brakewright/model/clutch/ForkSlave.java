package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A slave cylinder outside the bell housing that pushes a fork, as written. */
@Kind("fork_slave")
public record ForkSlave(
        @Asked(
                label = "bore",
                dimension = LENGTH,
                least = 0.01,
                most = 0.05,
                why = "slave cylinders lie within this",
                how = "Cast on the body, often as a fraction of an inch.")
        @Required("Cast on the body, often as a fraction of an inch.")
        Given bore,

        @Asked(
                label = "stroke",
                dimension = LENGTH,
                least = 0.005,
                most = 0.08,
                why = "slaves move within this",
                how = "From piston pushed home to piston against its clip.")
        @Nullable
        Given stroke,

        @Asked(
                label = "slave travel over bearing travel",
                dimension = RATIO,
                least = 0.5,
                most = 5.0,
                why = "forks lie within this",
                how = "Pivot to pushrod divided by pivot to bearing.")
        @Required("Pivot to pushrod divided by pivot to bearing.")
        Given forkRatio,

        @Asked(
                label = "stiffness of fork and pivot at the bearing",
                dimension = STIFFNESS,
                least = 1.0e5,
                most = 1.0e8,
                why = "a softer fork cannot release a clutch",
                how = "Hold the pedal down and watch with a dial gauge how far the fork creeps without the bearing.")
        @Nullable
        Given forkStiffness)
        implements Slave {}
