package org.brakewright.kernel.lever;

/**
 * A rod that is screwed into a clevis, set so that it can be made longer and shorter by the same amount without leaving
 * the clevis too far or bottoming in it. Engagement of 1 to 1.5 diameters in steel: common practice, no source.
 *
 * @param pinToEnd from the clevis pin to the rod's far end, m
 * @param clevis from the pin to the face where the rod enters, m
 * @param depth thread in the clevis, m
 * @param diameter of the thread, m
 */
public record ThreadedRod(double pinToEnd, double clevis, double depth, double diameter) {
    /** Engagement below which a thread is not trusted, in diameters. */
    public static final double LEAST = 1.0;

    /** Engagement that is asked for, in diameters. */
    public static final double WANTED = 1.5;

    public ThreadedRod {
        Demand.positive("pinToEnd", pinToEnd);
        Demand.positive("clevis", clevis);
        Demand.positive("depth", depth);
        Demand.positive("diameter", diameter);
    }

    /** How far (m) the rod is screwed in. */
    public double engagement() {
        return (least() + depth) / 2;
    }

    /** Most that the clevis allows, in diameters. */
    public double diameters() {
        return depth / diameter;
    }

    /** What is cut (m): the rod from its far end to its threaded one; not above zero when the clevis is too long. */
    public double cut() {
        return pinToEnd - clevis + engagement();
    }

    /** What it can be made longer and shorter by, m. */
    public double range() {
        return engagement() - least();
    }

    /** Thread (m) on the rod: all the way into the clevis, with a nut behind it that can be loosened by one turn. */
    public double thread(double nut, double pitch) {
        Demand.notNegative("nut", nut);
        Demand.positive("pitch", pitch);
        return depth + nut + pitch;
    }

    private double least() {
        return Math.min(WANTED * diameter, depth);
    }
}
