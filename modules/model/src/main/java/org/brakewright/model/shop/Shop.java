package org.brakewright.model.shop;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** What the shop makes of sheet and tube, and how its bender behaves. */
public record Shop(
        @Asked(
                label = "K-factor of bends in sheet",
                dimension = RATIO,
                least = 0.2,
                most = 0.5,
                why = "the layer that keeps its length lies on the inner half of the sheet",
                how = "Bend a strip of known length, measure both legs, and solve for it.")
        @Nullable
        Given kFactor,

        @Asked(
                label = "least inside radius that the tool bends",
                dimension = LENGTH,
                least = 0.0001,
                most = 0.1,
                why = "a folding tool has a nose within this",
                how = "Read it off the nose of the folder or punch; then a part with a smaller radius is refused.")
        @Nullable
        Given toolRadius,

        @Label(value = "folded parts", how = "Brackets, plates and stiffeners of strip, for their flat patterns.")
        @Nullable
        List<FoldedPart> folded,

        @Label(
                value = "tube joints",
                how = "Ends of round tube that meet another, for the paper that is wrapped round.")
        @Nullable
        List<TubeJoint> joints) {}
