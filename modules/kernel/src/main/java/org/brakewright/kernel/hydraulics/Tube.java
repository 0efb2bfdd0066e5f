package org.brakewright.kernel.hydraulics;

/**
 * A straight round tube under pressure inside, as a thick closed-end cylinder (Lame) and by Barlow's thin formulas.
 *
 * <p>Source: S. Timoshenko, Strength of Materials, thick-walled cylinders; R. Roark, Formulas for Stress and Strain.
 *
 * @param outsideDiameter m
 * @param wall thickness, less than half the outside diameter, m
 */
public record Tube(double outsideDiameter, double wall) {
    public Tube {
        Demand.positive("outsideDiameter", outsideDiameter);
        Demand.within("wall", wall, wall > 0 && wall < outsideDiameter / 2, "above 0, below half outsideDiameter");
    }

    /** Inside diameter, m. */
    public double insideDiameter() {
        return outsideDiameter - 2 * wall;
    }

    /** Area of the bore, m2. */
    public double boreArea() {
        return Bore.area(insideDiameter());
    }

    /** Volume (m3) that a length (m) holds. */
    public double boreVolume(double length) {
        return boreArea() * length;
    }

    /** Hoop stress (Pa) at the bore, where it is greatest. */
    public double hoopStressAtBore(double pressure) {
        return pressure * (outsideSquare() + insideSquare()) / (outsideSquare() - insideSquare());
    }

    /** Axial stress (Pa) of a tube with closed ends. */
    public double axialStress(double pressure) {
        return pressure * insideSquare() / (outsideSquare() - insideSquare());
    }

    /** Hoop stress (Pa) by Barlow on the outside diameter; above the exact one at the bore. */
    public double barlowStress(double pressure) {
        return pressure * outsideDiameter / (2 * wall);
    }

    /** Mean hoop stress (Pa) through the wall, by the thin-wall formula on the inside; below the exact one at the bore. */
    public double thinWallStress(double pressure) {
        return pressure * insideDiameter() / (2 * wall);
    }

    /**
     * Volume (m3) by which the bore grows: V (2 hoop strain + axial strain) at the bore.
     *
     * @param length m
     * @param pressure gauge, Pa
     * @param youngsModulus Pa
     * @param poissonRatio 0 to 0.5
     */
    public double swell(double length, double pressure, double youngsModulus, double poissonRatio) {
        double hoop = hoopStressAtBore(pressure);
        double axial = axialStress(pressure);
        double radial = -pressure;
        double hoopStrain = (hoop - poissonRatio * (axial + radial)) / youngsModulus;
        double axialStrain = (axial - poissonRatio * (hoop + radial)) / youngsModulus;
        return boreVolume(length) * (2 * hoopStrain + axialStrain);
    }

    /** Burst pressure (Pa) by Barlow on the outside diameter for a tensile strength (Pa): the safe side. */
    public double barlowOutside(double strength) {
        return 2 * wall * strength / outsideDiameter;
    }

    /** Burst pressure (Pa) by Barlow on the inside diameter for a tensile strength (Pa): the less safe side. */
    public double barlowInside(double strength) {
        return 2 * wall * strength / insideDiameter();
    }

    /** Pressure (Pa) at which the hoop stress at the bore reaches a stress (Pa), elastic. */
    public double pressureForHoop(double stress) {
        return stress / hoopStressAtBore(1);
    }

    private double outsideSquare() {
        return outsideDiameter * outsideDiameter;
    }

    private double insideSquare() {
        return insideDiameter() * insideDiameter();
    }
}
