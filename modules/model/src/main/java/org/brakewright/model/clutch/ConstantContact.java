package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.jspecify.annotations.Nullable;

/** A release bearing that a light spring keeps on the fingers. */
@Kind("constant_contact")
public record ConstantContact(
        @Asked(
                label = "how far it is pressed together at rest, new plate",
                dimension = LENGTH,
                least = 0.0,
                most = 0.06,
                why = "a bearing follows no further",
                how =
                        "Length of the bearing free, less its length in place; with a fork, at the pushrod and divided by the fork ratio.")
        @Nullable
        Given preload)
        implements Bearing {}
