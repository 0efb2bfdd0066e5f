package org.brakewright.kernel.mesh;

/**
 * A line or, when its ends are one, a point near which triangles are small.
 *
 * @param size wanted length of edges there, m
 */
public record Focus(Spot from, Spot to, double size) {
    public Focus {
        Require.positive("size", size);
    }

    public static Focus at(Spot spot, double size) {
        return new Focus(spot, spot, size);
    }

    double distance(Spot spot) {
        return new MustLine("", from, to).distance(spot);
    }
}
