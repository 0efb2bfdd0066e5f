package org.brakewright.kernel.thermal;

/** How friction heat shares itself between disc and pad: in proportion to effusivity and area, so that both skins are equally hot. */
public final class HeatPartition {
    private HeatPartition() {}

    /** sqrt(density x specific heat x conductivity), J/(m2 K s^0.5), from kg/m3, J/(kg K) and W/(m K). */
    public static double effusivity(double density, double specificHeat, double conductivity) {
        return Math.sqrt(density * specificHeat * conductivity);
    }

    /**
     * Share of the heat that goes into the rotor.
     *
     * @param rotorEffusivity J/(m2 K s^0.5)
     * @param rotorArea all that the linings sweep, m2: each spot is heated for part of a turn only
     * @param liningEffusivity J/(m2 K s^0.5)
     * @param liningArea of all linings that rub on it, m2
     */
    public static double rotorShare(
            double rotorEffusivity, double rotorArea, double liningEffusivity, double liningArea) {
        double rotor = rotorEffusivity * rotorArea;
        double lining = liningEffusivity * liningArea;
        Require.positive("effusivity times area", rotor + lining);
        return rotor / (rotor + lining);
    }
}
