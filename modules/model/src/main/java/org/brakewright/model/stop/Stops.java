package org.brakewright.model.stop;

import static org.brakewright.quantity.Dimension.INERTIA;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TIME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** What the stops that are followed over time need to know, as written. */
public record Stops(
        @Asked(
                label = "speed that stops begin at",
                dimension = SPEED,
                least = 5.0,
                most = 100.0,
                why =
                        "slower than 18 km/h a stop is over before the brakes have built up, and no test stops from more than 360 km/h")
        @Nullable
        Given speed,

        @Asked(
                label = "time in which the driver's push rises",
                dimension = TIME,
                least = 0.02,
                most = 3.0,
                why =
                        "no leg is quicker than a fiftieth of a second, and a stop that takes longer to begin is no hard stop")
        @Nullable
        Given rise,

        @Asked(
                label = "grip of the slippery road",
                dimension = RATIO,
                least = 0.05,
                most = 2.0,
                why = "grip is brake force over load: 0.1 on ice, about 0.5 on wet road")
        @Nullable
        Given slipperyGrip,

        @Asked(
                label = "slip at which the tyres hold most",
                dimension = RATIO,
                least = 0.02,
                most = 0.4,
                why = "a tyre that rolls freely has slip 0, a locked one 1, and the peak lies near a tenth")
        @Nullable
        Given peakSlip,

        @Asked(
                label = "grip of a locked wheel over the most it holds",
                dimension = RATIO,
                least = 0.4,
                most = 0.98,
                why = "a sliding tyre holds less than a rolling one, and never half as much on a road")
        @Nullable
        Given slidingShare,

        @Asked(
                label = "moment of inertia of one front wheel",
                dimension = INERTIA,
                least = 0.05,
                most = 20.0,
                why = "a wheel with tyre and disc has about 0.8 of its mass times its radius squared")
        @Nullable
        Given frontWheelInertia,

        @Asked(
                label = "moment of inertia of one rear wheel",
                dimension = INERTIA,
                least = 0.05,
                most = 20.0,
                why = "a wheel with tyre and disc has about 0.8 of its mass times its radius squared")
        @Nullable
        Given rearWheelInertia,

        @Label(value = "pitching of the body", how = "Left out, the load moves forward at once.") @Nullable
        Pitch pitch) {}
