package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A spring that holds the pedal up before its dead centre and helps the foot beyond it. */
@Kind("over_centre")
public record OverCentre(
        @Label(value = "action", how = "A pulling spring is longest at dead centre, a pushing one shortest.")
        @Required("pulls or pushes")
        Action action,

        @Asked(
                label = "spring rate",
                dimension = STIFFNESS,
                least = 500.0,
                most = 200000.0,
                why = "springs of pedals lie within this",
                how = "Load it with a known weight and measure.")
        @Required("Load it with a known weight and measure how far it gives.")
        Given springRate,

        @Asked(
                label = "free length",
                dimension = LENGTH,
                least = 0.02,
                most = 0.4,
                why = "springs of pedals lie within this")
        @Required("Measure the spring off the car, between its eyes or seats.")
        Given freeLength,

        @Asked(
                label = "pivot to its pin on the pedal",
                dimension = LENGTH,
                least = 0.01,
                most = 0.3,
                why = "a pin lies within 300 mm of the pivot")
        @Required("Straight line from the pedal pivot to the end on the pedal.")
        Given pinRadius,

        @Asked(
                label = "pivot to its anchor on the car",
                dimension = LENGTH,
                least = 0.01,
                most = 0.5,
                why = "an anchor lies within 500 mm of the pivot")
        @Required("Straight line from the pedal pivot to the end on the car.")
        Given anchorRadius,

        @Asked(
                label = "pad travel at dead centre",
                dimension = LENGTH,
                least = 0.0,
                most = 0.25,
                why = "it must lie within the stroke or just beyond it to be of use")
        @Required("Push until pivot and both ends of the spring lie in one line; read the pad travel.")
        Given deadCentre,

        @Asked(
                label = "pivot to pad centre",
                dimension = LENGTH,
                least = 0.05,
                most = 0.8,
                why = "a foot pedal's arm lies within this")
        @Required("Straight line from the pivot to the middle of the pad.")
        Given padArm)
        implements PedalSpring {}
