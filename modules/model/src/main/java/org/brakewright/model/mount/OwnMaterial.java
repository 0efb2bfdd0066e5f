package org.brakewright.model.mount;

import static org.brakewright.quantity.Dimension.DENSITY;
import static org.brakewright.quantity.Dimension.PRESSURE;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A material that the builder has data of. */
public record OwnMaterial(
        @Label("name of the material") @Required("Any name; parts call it by this.")
        String name,

        @Label("family") @Required("steel or aluminium.") Family family,

        @Asked(
                label = "modulus of elasticity",
                dimension = PRESSURE,
                least = 50000000000.0,
                most = 250000000000.0,
                why = "steel and aluminium lie within this")
        @Required("210 GPa for steel, 70 GPa for aluminium.")
        Given young,

        @Asked(
                label = "density",
                dimension = DENSITY,
                least = 2000.0,
                most = 9000.0,
                why = "steel and aluminium lie within this")
        @Required("7850 kg/m3 for steel, 2700 kg/m3 for aluminium.")
        Given density,

        @Asked(
                label = "yield or proof stress",
                dimension = PRESSURE,
                least = 20000000.0,
                most = 2000000000.0,
                why = "steel and aluminium lie within this")
        @Required("From its certificate.")
        Given yieldStress,

        @Asked(
                label = "tensile strength",
                dimension = PRESSURE,
                least = 50000000.0,
                most = 2500000000.0,
                why = "steel and aluminium lie within this")
        @Required("From its certificate.")
        Given tensileStrength) {}
