package org.brakewright.model.intent;

import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** What the builder wants of the brakes, as written. */
public record Intent(
        @Label("use of the car") @Required("road, road_and_track or track")
        Use use,

        @Label(
                value = "rule sets to answer to",
                how = "Any of un_r13h, fmvss_135, state_assessment, student_competition; an empty list for none.")
        @Required("Name the rule sets to judge by, or write [] for none.")
        List<RuleSet> ruleSets,

        @Asked(
                label = "deceleration of a hard stop",
                dimension = ACCELERATION,
                least = 0.5,
                most = 30.0,
                why = "less is no hard stop and more needs wings")
        @Nullable
        Given hardStop,

        @Asked(
                label = "most pedal effort for the hard stop",
                dimension = FORCE,
                least = 50.0,
                most = 1500.0,
                why = "a leg gives no more than about 1,300 N")
        @Nullable
        Given mostEffort,

        @Asked(
                label = "most pedal travel for the hard stop",
                dimension = LENGTH,
                least = 0.01,
                most = 0.2,
                why = "a foot works within this")
        @Nullable
        Given mostTravel,

        @Asked(
                label = "least part of the pedal travel left at the hard stop",
                dimension = RATIO,
                least = 0.0,
                most = 0.9,
                why = "it is a share of the travel from free position to stop")
        @Nullable
        Given leastReserve,

        @Asked(
                label = "least part of the master's stroke left at the hard stop",
                dimension = RATIO,
                least = 0.0,
                most = 0.9,
                why = "it is a share of the stroke")
        @Nullable
        Given leastStrokeLeft,

        @Asked(
                label = "balance margin beyond the grip",
                dimension = RATIO,
                least = 0.0,
                most = 0.5,
                why = "it says how far beyond the grip the front must still lock first")
        @Nullable
        Given balanceMargin,

        @Asked(
                label = "panic push at the pad",
                dimension = FORCE,
                least = 200.0,
                most = 3000.0,
                why = "a frightened leg lies within this")
        @Nullable
        Given panicPush,

        @Asked(
                label = "air in one circuit, as a failure case",
                dimension = RATIO,
                least = 0.0,
                most = 0.5,
                why = "with more than half of it air a circuit has failed",
                how =
                        "Share of a circuit's fluid that is air when its pedal has gone soft: what you want the car to survive.")
        @Nullable
        Given airInOneCircuit) {}
