package org.brakewright.kernel.structure;

/**
 * A spring with no size: it acts at the place of its first node; a second node elsewhere reaches there by a stiff arm.
 *
 * @param to the second node, or {@link #GROUND}
 * @param axes of the stiffnesses
 */
public record Spring(String part, int from, int to, Axes axes, SpringRate rate) implements Element {
    public static final int GROUND = -1;

    /** A spring along the structure's axes that holds a node to the ground. */
    public static Spring toGround(String part, int node, SpringRate rate) {
        return new Spring(part, node, GROUND, Axes.OF_STRUCTURE, rate);
    }

    @Override
    public int[] nodes() {
        return to == GROUND ? new int[] {from} : new int[] {from, to};
    }
}
