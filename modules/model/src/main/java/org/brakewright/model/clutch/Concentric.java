package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** A ring piston round the input shaft that carries the release bearing, as written. */
@Kind("concentric")
public record Concentric(
        @Asked(
                label = "outer seal diameter",
                dimension = LENGTH,
                least = 0.03,
                most = 0.12,
                why = "rings round an input shaft lie within this",
                how = "From the part sheet, or bore of the ring in the body.")
        @Required("From the part sheet, or measure the bore of the ring in the body.")
        Given outerDiameter,

        @Asked(
                label = "inner seal diameter",
                dimension = LENGTH,
                least = 0.02,
                most = 0.1,
                why = "rings round an input shaft lie within this",
                how = "From the part sheet, or outside of the sleeve.")
        @Required("From the part sheet, or measure the outside of the sleeve.")
        Given innerDiameter,

        @Asked(
                label = "stroke",
                dimension = LENGTH,
                least = 0.005,
                most = 0.08,
                why = "slaves move within this",
                how = "From piston pushed home to piston against its clip.")
        @Nullable
        Given stroke)
        implements Slave {}
