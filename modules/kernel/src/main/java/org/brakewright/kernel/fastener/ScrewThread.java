package org.brakewright.kernel.fastener;

/**
 * An external thread.
 *
 * @param diameter nominal, m
 * @param pitch m
 * @param stressArea the area that carries tension, m2
 */
public record ScrewThread(double diameter, double pitch, double stressArea) {
    public ScrewThread {
        Require.positive("diameter", diameter);
        Require.that(pitch > 0 && pitch < diameter, "pitch", pitch, "must lie between zero and the diameter");
        Require.that(
                stressArea > 0 && stressArea < Math.PI / 4 * diameter * diameter,
                "stressArea",
                stressArea,
                "must be above zero and below the area of the shank");
    }

    /** Metric thread; area by ISO 898-1 (from memory). */
    public static ScrewThread metric(double diameter, double pitch) {
        return of(diameter, pitch, 0.9382);
    }

    /**
     * Inch thread; area by ASME B1.1 (from memory).
     *
     * @param pitch one inch over the threads per inch, m
     */
    public static ScrewThread inch(double diameter, double pitch) {
        return of(diameter, pitch, 0.9743);
    }

    private static ScrewThread of(double diameter, double pitch, double depth) {
        double core = diameter - depth * pitch;
        Require.positive("diameter less thread", core);
        return new ScrewThread(diameter, pitch, Math.PI / 4 * core * core);
    }
}
