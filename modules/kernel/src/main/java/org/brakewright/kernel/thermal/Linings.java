package org.brakewright.kernel.thermal;

/**
 * All pads or linings of one wheel as one lump.
 *
 * @param capacity J/K
 * @param effusivity J/(m2 K s^0.5)
 * @param area that rubs, m2
 * @param pressed conductance from rotor to the middle of the linings while they rub, W/K
 * @param released the same through the air gap when they do not, W/K
 */
public record Linings(double capacity, double effusivity, double area, double pressed, double released) {
    public Linings {
        Require.positive("capacity", capacity);
        Require.positive("effusivity", effusivity);
        Require.positive("area", area);
        Require.notNegative("pressed", pressed);
        Require.notNegative("released", released);
    }
}
