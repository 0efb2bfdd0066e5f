package org.brakewright.model.hydraulics;

import static org.brakewright.quantity.Dimension.EXPANSION_PER_LENGTH;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.VOLUME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.jspecify.annotations.Nullable;

/** Tube and hose of one circuit, as written. */
public record Line(
        @Asked(
                label = "tube length",
                dimension = LENGTH,
                least = 0.0,
                most = 30.0,
                why = "no car carries more than 30 m in one circuit",
                how = "All tube of this circuit together, measured with a string.")
        @Nullable
        Given tubeLength,

        @Asked(
                label = "tube outside diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.012,
                why = "brake tube lies within this")
        @Nullable
        Given tubeOutsideDiameter,

        @Asked(
                label = "tube wall",
                dimension = LENGTH,
                least = 0.0003,
                most = 0.003,
                why = "brake tube lies within this")
        @Nullable
        Given tubeWall,

        @Asked(
                label = "stiffness (Young's modulus) of the tube",
                dimension = PRESSURE,
                least = 5.0e10,
                most = 3.0e11,
                why = "metals used for brake tube lie within this")
        @Nullable
        Given tubeModulus,

        @Asked(
                label = "hose length",
                dimension = LENGTH,
                least = 0.0,
                most = 10.0,
                why = "no car carries more than 10 m of hose in one circuit",
                how = "Free length of all hoses of this circuit together.")
        @Nullable
        Given hoseLength,

        @Asked(
                label = "hose expansion at 10.3 MPa (1,500 psi)",
                dimension = EXPANSION_PER_LENGTH,
                least = 0.0,
                most = 2.0e-5,
                why = "no brake hose swells by more than 20 cc a metre")
        @Nullable
        Given hoseExpansion,

        @Asked(
                label = "fluid in calipers, cylinders and master",
                dimension = VOLUME,
                least = 0.0,
                most = 5.0e-4,
                why = "more than 500 cc does not fit in wheel brakes")
        @Nullable
        Given trappedVolume,

        @Asked(
                label = "pressure that the residual valve keeps",
                dimension = PRESSURE,
                least = 0.0,
                most = 3.0e5,
                why = "residual valves of cars keep 0.14 or 0.7 bar (2 or 10 psi)",
                how = "Stamped on the valve; leave it out when there is none.")
        @Nullable
        Given residualValve,

        @Asked(
                label = "fluid level above the brakes",
                dimension = LENGTH,
                least = -1.5,
                most = 2.0,
                why = "a reservoir stands within 2 m of the brakes",
                how =
                        "Height of the reservoir's fluid over the highest bleeder of this circuit; minus when it is lower.")
        @Nullable
        Given levelAboveBrakes,

        @Asked(
                label = "usable fluid in the reservoir",
                dimension = VOLUME,
                least = 0.0,
                most = 2.0e-3,
                why = "a brake reservoir holds less than two litres",
                how = "Of this circuit's own compartment, between the full mark and the port it feeds.")
        @Nullable
        Given reservoirVolume) {}
