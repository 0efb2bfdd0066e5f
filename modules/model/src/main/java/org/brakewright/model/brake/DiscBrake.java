package org.brakewright.model.brake;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.LENGTH_PER_PRESSURE;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Disc brakes of one axle, as written: one caliper a wheel. */
@Kind("disc")
public record DiscBrake(
        @Label(value = "caliper type", how = "Fixed has pistons on both sides of the disc; sliding moves on pins.")
        @Required("fixed: pistons on both sides of the disc; sliding: pistons on one side, the body moves on pins.")
        CaliperType caliper,

        @Asked(
                label = "piston diameters on one side of the disc",
                dimension = LENGTH,
                least = 0.01,
                most = 0.12,
                why = "smaller or larger pistons are not found in car calipers")
        @Required("Measure each piston on ONE side of the disc; a fixed caliper repeats them on the other side.")
        List<Given> pistons,

        @Asked(
                label = "pad friction",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no pad is outside this, hot or wet")
        @Nullable
        Given padFriction,

        @Asked(
                label = "effective radius",
                dimension = LENGTH,
                least = 0.03,
                most = 0.3,
                why = "the pads lie between hub and rim")
        @Nullable
        Given effectiveRadius,

        @Label(value = "pad geometry", how = "Instead of the effective radius: the radii between which the pad rubs.")
        @Nullable
        PadGeometry pad,

        @Asked(
                label = "threshold pressure",
                dimension = PRESSURE,
                least = 0.0,
                most = 2.0e6,
                why = "it only overcomes seals and springs")
        @Nullable
        Given thresholdPressure,

        @Asked(
                label = "running clearance per pad",
                dimension = LENGTH,
                least = 0.0,
                most = 0.003,
                why = "more than 3 mm is a seized or wrong part")
        @Nullable
        Given runningClearance,

        @Asked(
                label = "knock-back per pad",
                dimension = LENGTH,
                least = 0.0,
                most = 0.003,
                why = "more than 3 mm is a loose bearing",
                how = "How far a corner or a rough road pushes each pad back beyond its running clearance.")
        @Nullable
        Given knockBack,

        @Asked(
                label = "caliper spread per pressure",
                dimension = LENGTH_PER_PRESSURE,
                least = 0.0,
                most = 0.5e-9,
                why = "no working caliper opens by more than 0.5 mm per MPa")
        @Nullable
        Given caliperSpread,

        @Asked(
                label = "pad compression per pressure, each pad",
                dimension = LENGTH_PER_PRESSURE,
                least = 0.0,
                most = 0.1e-9,
                why = "no pad gives by more than 0.1 mm per MPa")
        @Nullable
        Given padCompression,

        @Asked(
                label = "settling of each pad under light pressure",
                dimension = LENGTH,
                least = 0.0,
                most = 0.001,
                why = "a pad that settles by more than 1 mm is bent or not bedded",
                how = "What pad, shim and back plate give at light pressure and no more at higher pressure.")
        @Nullable
        Given padSettling,

        @Asked(
                label = "lining that a pad may lose",
                dimension = LENGTH,
                least = 0.0,
                most = 0.03,
                why = "no car pad carries more lining",
                how = "New lining less the least that the maker allows.")
        @Nullable
        Given padWear,

        @Asked(
                label = "rated pressure of the caliper",
                dimension = PRESSURE,
                least = 1.0e6,
                most = 40.0e6,
                why = "ratings of car calipers lie within this",
                how = "From the part sheet.")
        @Nullable
        Given ratedPressure,

        @Asked(
                label = "pad friction, cold",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no pad is outside this, hot or wet",
                how = "The first stop of a cold morning, from the pad maker's curve.")
        @Nullable
        Given padFrictionCold,

        @Asked(
                label = "pad friction, hot",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no pad is outside this, hot or wet",
                how = "As the pads fade, from the pad maker's curve at the highest temperature you see.")
        @Nullable
        Given padFrictionHot,

        @Asked(
                label = "pad friction, wet",
                dimension = RATIO,
                least = 0.05,
                most = 0.9,
                why = "no pad is outside this, hot or wet",
                how = "The first moments with water on the disc.")
        @Nullable
        Given padFrictionWet)
        implements WheelBrake {}
