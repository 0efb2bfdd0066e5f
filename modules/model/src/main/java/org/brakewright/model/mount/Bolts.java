package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.TORQUE;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Bolts of one size that hold a bracket to the panel. */
public record Bolts(
        @Asked(
                label = "thread diameter",
                dimension = LENGTH,
                least = 0.004,
                most = 0.016,
                why = "thinner screws carry no pedal and thicker ones fit no bracket")
        @Required("Measure over the threads; 8 mm and 5/16 in are usual.")
        Given diameter,

        @Asked(
                label = "thread pitch",
                dimension = LENGTH,
                least = 0.0005,
                most = 0.0025,
                why = "bolts carry fine or coarse threads between these")
        @Required("Measure ten threads and divide by ten.")
        Given pitch,

        @Label("strength grade") @Required("Read the head; a head without a mark is class_4_6 or sae_2.")
        BoltClass grade,

        @Label("where they sit")
        @Required("Each bolt on the panel; two at least, and not in one row when nothing else holds the bracket.")
        List<Spot> positions,

        @Asked(
                label = "hole in the panel",
                dimension = LENGTH,
                least = 0.004,
                most = 0.03,
                why = "a bolt passes through it",
                how = "The drill; usually half a millimetre over the bolt.")
        @Nullable
        Given hole,

        @Asked(
                label = "outside diameter of washer or head",
                dimension = LENGTH,
                least = 0.006,
                most = 0.06,
                why = "it lies under the bolt")
        @Required("What presses on the sheet; of two sides the smaller counts.")
        Given washer,

        @Asked(
                label = "thickness clamped",
                dimension = LENGTH,
                least = 0.001,
                most = 0.08,
                why = "a bolt clamps sheet and bracket")
        @Required("From under the head to the nut: panel, doubler, bracket foot and washers.")
        Given clamped,

        @Asked(
                label = "length of thread in the nut",
                dimension = LENGTH,
                least = 0.002,
                most = 0.05,
                why = "a nut holds by its threads",
                how = "The height of the nut, or how deep the bolt is screwed in.")
        @Nullable
        Given engagement,

        @Asked(
                label = "tightening torque",
                dimension = TORQUE,
                least = 0.5,
                most = 200.0,
                why = "a mount bolt is tightened with a hand tool",
                how = "What the torque wrench was set to, dry threads.")
        @Nullable
        Given torque,

        @Asked(
                label = "web of the bracket to the bolt",
                dimension = LENGTH,
                least = 0.002,
                most = 0.1,
                why = "a bracket foot is no longer than this",
                how = "From where the foot leaves the web to the middle of the bolt; then prying is counted.")
        @Nullable
        Given rootToBolt,

        @Asked(
                label = "bolt to the edge of the foot",
                dimension = LENGTH,
                least = 0.002,
                most = 0.1,
                why = "a bracket foot is no longer than this",
                how = "From the middle of the bolt outward to the edge of the foot.")
        @Nullable
        Given boltToEdge) {}
