package org.brakewright.model.heat;

import static org.brakewright.quantity.Dimension.AREA;
import static org.brakewright.quantity.Dimension.HEAT_TRANSFER;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TEMPERATURE;

import java.util.List;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.jspecify.annotations.Nullable;

/** What heat sees of the brakes of one axle, as written; masses and areas are those of ONE wheel, areas of one lining. */
public record BrakeHeat(
        @Asked(
                label = "mass of one disc or drum",
                dimension = MASS,
                least = 0.2,
                most = 60.0,
                why = "a rotor without iron has nowhere to put the heat",
                how = "Weigh one disc or drum.")
        @Nullable
        Given rotorMass,

        @Asked(
                label = "outside diameter of disc or drum",
                dimension = LENGTH,
                least = 0.1,
                most = 0.7,
                why = "it fits inside a wheel",
                how = "Measure across the disc, or the outside of the drum.")
        @Nullable
        Given outerDiameter,

        @Asked(
                label = "thickness of the disc",
                dimension = LENGTH,
                least = 0.003,
                most = 0.06,
                why = "discs of cars lie within this",
                how = "Over both rubbed faces.")
        @Nullable
        Given thickness,

        @Asked(
                label = "air gap inside a vented disc",
                dimension = LENGTH,
                least = 0.002,
                most = 0.03,
                why = "it is the gap between the two cheeks",
                how = "Leave out for a solid disc.")
        @Nullable
        Given ventGap,

        @Asked(
                label = "number of passages of a vented disc",
                dimension = RATIO,
                least = 6.0,
                most = 120.0,
                why = "vented discs have some dozens",
                how = "Count the openings at the rim.")
        @Nullable
        Given ventCount,

        @Asked(
                label = "width of the drum",
                dimension = LENGTH,
                least = 0.015,
                most = 0.25,
                why = "drums of cars lie within this",
                how = "Along the axle, over the rubbed band.")
        @Nullable
        Given drumWidth,

        @Asked(
                label = "emissivity of disc or drum",
                dimension = RATIO,
                least = 0.1,
                most = 0.95,
                why = "no rough iron radiates less or more",
                how = "0.25 bright and rubbed, 0.8 rusty.")
        @Nullable
        Given emissivity,

        @Asked(
                label = "air speed at the brake over road speed",
                dimension = RATIO,
                least = 0.05,
                most = 1.5,
                why = "a wheel keeps some of the air out, a duct brings it in",
                how = "0.3 behind closed wheels, 1 in the open or with ducts.")
        @Nullable
        Given airflow,

        @Asked(
                label = "most temperature of disc or drum",
                dimension = TEMPERATURE,
                least = 373.15,
                most = 1273.15,
                why = "iron glows and cracks within this",
                how = "From the part sheet or your own experience.")
        @Nullable
        Given rotorLimit,

        @Asked(
                label = "area of one pad or lining",
                dimension = AREA,
                least = 0.0003,
                most = 0.05,
                why = "pads and linings of cars lie within this",
                how = "Length times height of the friction material.")
        @Nullable
        Given liningArea,

        @Asked(
                label = "thickness of the lining",
                dimension = LENGTH,
                least = 0.001,
                most = 0.03,
                why = "linings of cars lie within this",
                how = "Friction material alone.")
        @Nullable
        Given liningThickness,

        @Asked(
                label = "most temperature of pad or lining",
                dimension = TEMPERATURE,
                least = 373.15,
                most = 1323.15,
                why = "friction material burns within this",
                how = "From the maker's sheet.")
        @Nullable
        Given liningLimit,

        @Asked(
                label = "temperature from which friction falls",
                dimension = TEMPERATURE,
                least = 343.15,
                most = 1273.15,
                why = "it lies between a warm and a burning lining",
                how =
                        "From the maker's curve; without a curve friction falls in a straight line from here to the hot friction at the limit.")
        @Nullable
        Given fadeFrom,

        @Label(
                value = "friction against temperature",
                how = "The maker's curve, coolest point first, against the temperature of the disc.")
        @Nullable
        List<FrictionPoint> frictionCurve,

        @Asked(
                label = "mass of one caliper, or back plate with wheel cylinder",
                dimension = MASS,
                least = 0.2,
                most = 30.0,
                why = "a caliper without mass does not exist",
                how = "Weigh one caliper without pads.")
        @Nullable
        Given housingMass,

        @Asked(
                label = "heat that pistons pass from lining to fluid",
                dimension = HEAT_TRANSFER,
                least = 5.0,
                most = 2000.0,
                why = "it is a hollow piston on a back plate",
                how = "150 for steel cups, 60 with insulation.")
        @Nullable
        Given pistonHeatTransfer) {}
