package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.EXPANSION_PER_LENGTH;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.VOLUME;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.jspecify.annotations.Nullable;

/** Tube and hose between master and slave, as written. */
public record ReleaseLine(
        @Asked(
                label = "tube length",
                dimension = LENGTH,
                least = 0.0,
                most = 10.0,
                why = "no car carries more than 10 m to its clutch")
        @Nullable
        Given tubeLength,

        @Asked(
                label = "tube outside diameter",
                dimension = LENGTH,
                least = 0.003,
                most = 0.012,
                why = "tube for clutches lies within this")
        @Nullable
        Given tubeOutsideDiameter,

        @Asked(
                label = "tube wall",
                dimension = LENGTH,
                least = 0.0003,
                most = 0.003,
                why = "tube for clutches lies within this")
        @Nullable
        Given tubeWall,

        @Asked(
                label = "stiffness (Young's modulus) of the tube",
                dimension = PRESSURE,
                least = 5.0e8,
                most = 3.0e11,
                why = "from plastic to steel, tube lies within this")
        @Nullable
        Given tubeModulus,

        @Asked(
                label = "hose length",
                dimension = LENGTH,
                least = 0.0,
                most = 5.0,
                why = "no car carries more than 5 m of hose to its clutch",
                how = "Free length of all hoses together.")
        @Nullable
        Given hoseLength,

        @Asked(
                label = "hose expansion at 10.3 MPa (1,500 psi)",
                dimension = EXPANSION_PER_LENGTH,
                least = 0.0,
                most = 2.0e-5,
                why = "no hose for this swells by more than 20 cc a metre")
        @Nullable
        Given hoseExpansion,

        @Asked(
                label = "fluid in slave and master",
                dimension = VOLUME,
                least = 0.0,
                most = 2.0e-4,
                why = "more than 200 cc does not fit")
        @Nullable
        Given trappedVolume) {}
