package org.brakewright.analysis.heat;

import org.brakewright.kernel.thermal.GreyIron;
import org.brakewright.kernel.thermal.HeatPartition;
import org.brakewright.kernel.thermal.Housing;
import org.brakewright.kernel.thermal.Linings;
import org.brakewright.kernel.thermal.Rotor;
import org.brakewright.kernel.thermal.RotorSurface;
import org.brakewright.kernel.thermal.RubbedFace;
import org.brakewright.kernel.thermal.VaneConvection;
import org.brakewright.kernel.thermal.WheelFluid;
import org.brakewright.kernel.thermal.WheelHeat;
import org.brakewright.model.resolved.ResolvedBrakeHeat;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Disc;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Drum;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Vents;

/** The lumps of one wheel from what the builder knows of it. What nobody measures is an estimate, with its range beside it. */
public final class WheelHeats {
    /** Friction material, from memory: 2,200 to 3,000 kg/m3, 900 to 1,200 J/(kg K), 0.8 to 2 W/(m K). */
    private static final double LINING_DENSITY = 2600;

    private static final double LINING_HEAT = 1000;
    private static final double LINING_CONDUCTIVITY = 1.4;

    /** Steel plate under the lining, m (4 to 6 mm), and its heat for each volume, J/(m3 K). */
    private static final double PLATE = 5.0e-3;

    private static final double STEEL = 7850 * 460.0;

    /** Both sides of a wheel. */
    private static final int LININGS = 2;

    /** Air in the gap of a released brake, W/(m K), near 500 K. */
    private static final double GAP_CONDUCTIVITY = 0.04;

    /** J/(kg K) of an iron housing; light metal stores twice as much for each kilogram. */
    private static final double HOUSING_HEAT = 480;

    /** Outside of a compact housing, m2 for each kg^(2/3): 0.015 to 0.03. */
    private static final double HOUSING_SKIN = 0.02;

    private static final double HOUSING_LENGTH = 0.15;

    /** Through the abutments of all linings of a wheel, W/K: 0.1 to 1. */
    private static final double ABUTMENTS = 0.3;

    /** Fluid behind the pistons: depth m (5 to 20 mm), heat for each volume J/(m3 K), wall over piston area, W/(m2 K) to the wall. */
    private static final double FLUID_DEPTH = 10.0e-3;

    private static final double FLUID_HEAT = 1050 * 2100.0;
    private static final double FLUID_WALL = 3;
    private static final double FLUID_TRANSFER = 300;

    /** Share of the rim that walls between passages take. */
    private static final double VANES = 0.3;

    private WheelHeats() {}

    /** The lumps of one wheel. */
    public static WheelHeat of(ResolvedBrakeHeat brake) {
        double area = LININGS * brake.lining().area();
        double half = 2 * LINING_CONDUCTIVITY * area / brake.lining().thickness();
        double gap = GAP_CONDUCTIVITY * area / brake.releasedGap();
        double pistons = brake.pistonTransfer() * brake.pistonArea();
        double capacity = area * (LINING_DENSITY * LINING_HEAT * brake.lining().thickness() + STEEL * PLATE);
        double effusivity = HeatPartition.effusivity(LINING_DENSITY, LINING_HEAT, LINING_CONDUCTIVITY);
        return new WheelHeat(
                rotor(brake),
                new Linings(capacity, effusivity, area, half, inSeries(half, gap)),
                housing(brake),
                new WheelFluid(
                        FLUID_HEAT * FLUID_DEPTH * brake.pistonArea(),
                        inSeries(half, pistons),
                        FLUID_TRANSFER * FLUID_WALL * brake.pistonArea()));
    }

    /** The slab behind the rubbed face, with iron at a temperature in K. */
    static RubbedFace face(ResolvedBrakeHeat brake, double temperature) {
        double depth = switch (brake.rotor()) {
            case Disc disc ->
                0.5 * (disc.thickness() - disc.vents().map(Vents::gap).orElse(0.0));
            case Drum drum -> 0.5 * drum.outerDiameter() - drum.rubbedRadius();
        };
        return new RubbedFace(depth, GreyIron.conductivity(temperature), GreyIron.diffusivity(temperature));
    }

    private static Housing housing(ResolvedBrakeHeat brake) {
        double skin = HOUSING_SKIN * Math.cbrt(brake.housingMass() * brake.housingMass());
        return new Housing(brake.housingMass() * HOUSING_HEAT, skin, HOUSING_LENGTH, brake.airflow(), ABUTMENTS);
    }

    private static Rotor rotor(ResolvedBrakeHeat brake) {
        return switch (brake.rotor()) {
            case Disc disc -> disc(brake, disc);
            case Drum drum -> drum(brake, drum);
        };
    }

    private static Rotor disc(ResolvedBrakeHeat brake, Disc disc) {
        double rim = Math.PI * disc.outerDiameter() * disc.thickness();
        double open = disc.sweptArea() - LININGS * brake.lining().area() + rim;
        RotorSurface.Disc outside = new RotorSurface.Disc(disc.outerDiameter(), open, brake.airflow());
        RotorSurface surface =
                disc.vents().isPresent() ? vented(disc, disc.vents().get(), outside) : outside;
        return new Rotor(disc.mass(), surface, open, disc.emissivity(), disc.sweptArea());
    }

    private static RotorSurface vented(Disc disc, Vents vents, RotorSurface.Disc outside) {
        double middle = 0.5 * (disc.outerDiameter() + disc.innerDiameter());
        double width = (1 - VANES) * Math.PI * middle / vents.count();
        double length = 0.5 * (disc.outerDiameter() - disc.innerDiameter());
        double hydraulic = 2 * width * vents.gap() / (width + vents.gap());
        double walls = vents.count() * 2 * (width + vents.gap()) * length;
        return new RotorSurface.VentedDisc(outside, new VaneConvection(hydraulic, length), walls, disc.innerDiameter());
    }

    private static Rotor drum(ResolvedBrakeHeat brake, Drum drum) {
        double diameter = drum.outerDiameter();
        double outside = Math.PI * diameter * (drum.width() + diameter / 4);
        RotorSurface surface = new RotorSurface.Drum(diameter, outside, brake.airflow());
        return new Rotor(drum.mass(), surface, outside, drum.emissivity(), drum.sweptArea());
    }

    private static double inSeries(double one, double other) {
        return one * other / (one + other);
    }
}
