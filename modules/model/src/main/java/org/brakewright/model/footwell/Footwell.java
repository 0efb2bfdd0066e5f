package org.brakewright.model.footwell;

import static org.brakewright.quantity.Dimension.LENGTH;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.lines.Obstacle;
import org.jspecify.annotations.Nullable;

/** The pedals side by side, and what stands round them. Places from the zero of the lines; the throttle is the right one. */
public record Footwell(
        @Label("brake pedal") @Required("Breadth and height of its pad.")
        FootPedal brake,

        @Label(value = "clutch pedal", how = "Left out on a car of two pedals.") @Nullable
        FootPedal clutch,

        @Label("throttle pedal") @Required("Breadth, height, pivot, pad and travel.")
        FootPedal throttle,

        @Asked(
                label = "thickness of the arms",
                dimension = LENGTH,
                least = 0.004,
                most = 0.06,
                why = "arms of pedals lie within this",
                how = "The room that each arm takes, with clevis and bolts.")
        @Nullable
        Given arm,

        @Asked(
                label = "nearest wall on the left",
                dimension = LENGTH,
                least = -3.0,
                most = 3.0,
                why = "a car lies within 3 m of its zero",
                how = "How far left of the zero: kick panel, footrest or wheel arch, at the height of the pads.")
        @Nullable
        Given leftWall,

        @Asked(
                label = "nearest wall on the right",
                dimension = LENGTH,
                least = -3.0,
                most = 3.0,
                why = "a car lies within 3 m of its zero",
                how = "How far left of the zero: the tunnel, at the height of the pads.")
        @Nullable
        Given rightWall,

        @Label(value = "obstacles", how = "What pedals must not touch: column, shaft, tunnel, floor, dash.") @Nullable
        List<Obstacle> obstacles,

        @Label("whose foot") @Required("One of the words allowed; men_95 is the broad one.")
        Person driver,

        @Label("shoe") @Required("One of the words allowed.")
        Shoe shoe,

        @Label(value = "heel and toe", how = "Whether one foot is to brake and blip the throttle.") @Nullable
        Boolean heelAndToe) {}
