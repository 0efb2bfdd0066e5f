package org.brakewright.kernel.clutch;

/**
 * Master, line and slave of a hydraulic clutch release, with a fork or without.
 *
 * <p>Volume: what the master gives moves the slave and is taken up by the line. Force: the slave's push times the fork's
 * lever, less friction, is what the bearing gives. Source: volume and lever balance.
 *
 * @param masterArea m2
 * @param slaveArea of the slave's piston, or of the ring of a concentric slave, m2
 * @param forkRatio slave travel over bearing travel; 1 for a concentric slave
 * @param efficiency share of the slave's push that seals, fork and bearing guide leave, more than 0, at most 1
 */
public record HydraulicRelease(double masterArea, double slaveArea, double forkRatio, double efficiency) {
    public HydraulicRelease {
        Demand.positive("masterArea", masterArea);
        Demand.positive("slaveArea", slaveArea);
        Demand.positive("forkRatio", forkRatio);
        Demand.within("efficiency", efficiency, efficiency > 0 && efficiency <= 1, "more than 0, at most 1");
    }

    /** Pressure (Pa) that a force at the bearing (N) takes. */
    public double pressure(double bearingForce) {
        return bearingForce / (forkRatio * slaveArea * efficiency);
    }

    /** Master stroke (m), its lost stroke left out, for a bearing travel (m) while the line takes up a volume (m3). */
    public double masterStroke(double bearingTravel, double takenUp) {
        return (slaveArea * forkRatio * bearingTravel + takenUp) / masterArea;
    }

    /** Bearing travel (m) for a master stroke (m), its lost stroke left out, while the line takes up a volume (m3). */
    public double bearingTravel(double masterStroke, double takenUp) {
        return (masterArea * masterStroke - takenUp) / (slaveArea * forkRatio);
    }

    /** Area of the ring (m2) of a concentric slave between two diameters (m). */
    public static double ring(double outerDiameter, double innerDiameter) {
        Demand.positive("innerDiameter", innerDiameter);
        Demand.within("outerDiameter", outerDiameter, outerDiameter > innerDiameter, "more than innerDiameter");
        return Math.PI / 4 * (outerDiameter - innerDiameter) * (outerDiameter + innerDiameter);
    }
}
