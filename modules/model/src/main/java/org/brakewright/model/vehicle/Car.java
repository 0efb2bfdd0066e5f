package org.brakewright.model.vehicle;

import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPEED;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** The car as written. */
public record Car(
        @Asked(
                label = "wheelbase",
                dimension = LENGTH,
                least = 1.0,
                most = 6.0,
                why = "no car that this tool can judge is shorter or longer between its axles")
        @Required("Measure between wheel centres, both sides, and take the mean.")
        Given wheelbase,

        @Asked(
                label = "front tyre rolling radius",
                dimension = LENGTH,
                least = 0.12,
                most = 0.7,
                why = "it is the height of the wheel centre over the ground, not the diameter")
        @Required("Roll the car one wheel turn, measure the distance, divide by 6.283.")
        Given frontTyreRadius,

        @Asked(
                label = "rear tyre rolling radius",
                dimension = LENGTH,
                least = 0.12,
                most = 0.7,
                why = "it is the height of the wheel centre over the ground, not the diameter")
        @Required("Roll the car one wheel turn, measure the distance, divide by 6.283.")
        Given rearTyreRadius,

        @Asked(
                label = "tyre grip",
                dimension = RATIO,
                least = 0.05,
                most = 3.0,
                why = "grip is brake force over load: 0.1 on ice, about 0.9 on dry road, up to 2 on racing tyres")
        @Nullable
        Given grip,

        @Asked(
                label = "top speed",
                dimension = SPEED,
                least = 3.0,
                most = 140.0,
                why = "slower is no road vehicle and faster is beyond what this tool knows")
        @Nullable
        Given topSpeed,

        @Label("load cases") @Required("Give at least one load case with both axle loads.")
        List<LoadCase> loadCases,

        @Label(
                value = "forces of the air",
                how = "Downforce, lift and drag; without them the balance is that of a slow car.")
        @Nullable
        Aero aero,

        @Label(
                value = "engine braking",
                how = "What the engine holds back while braking in gear; without it the clutch is taken as pressed.")
        @Nullable
        EngineBraking engineBraking,

        @Asked(
                label = "tyre load sensitivity",
                dimension = RATIO,
                least = 0.0,
                most = 0.5,
                why =
                        "it is the grip lost per relative rise of axle load: 0.1 when 10 % more load costs 1 % of the grip",
                how = "From tyre data; without it the grip is the same at every load.")
        @Nullable
        Given loadSensitivity) {}
