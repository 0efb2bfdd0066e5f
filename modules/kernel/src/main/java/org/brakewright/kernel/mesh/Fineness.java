package org.brakewright.kernel.mesh;

import java.util.List;

/**
 * How long edges shall be: at a focus as it says, farther off longer by the growth, nowhere longer than coarse. Edges
 * come out up to one and a half times as long, mostly near the wanted length; near small details they are shorter.
 *
 * @param coarse m
 * @param growth wanted length gained per distance from the focus, -; 0.3 is common
 */
public record Fineness(double coarse, double growth, List<Focus> focuses) {
    public Fineness {
        Require.positive("coarse", coarse);
        Require.positive("growth", growth);
        focuses = List.copyOf(focuses);
    }

    public static Fineness even(double size) {
        return new Fineness(size, 1, List.of());
    }

    /** The wanted length of edges at a spot, m. */
    public double at(Spot spot) {
        double size = coarse;
        for (Focus focus : focuses) {
            size = Math.min(size, focus.size() + growth * focus.distance(spot));
        }
        return size;
    }
}
