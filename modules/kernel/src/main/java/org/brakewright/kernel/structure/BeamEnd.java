package org.brakewright.kernel.structure;

import java.util.Set;

/**
 * How a beam ends at a node.
 *
 * @param offset from the node to the end of the beam, stiff, in the structure's axes, m
 * @param released what the end does not pass on, in the beam's axes
 */
public record BeamEnd(int node, Vector3 offset, Set<Freedom> released) {
    /** Bending is not passed on; torsion is. */
    public static final Set<Freedom> HINGE = Set.of(Freedom.TURN_Y, Freedom.TURN_Z);

    /** No moment is passed on, as by a ball joint or rod end. */
    public static final Set<Freedom> BALL = Set.of(Freedom.TURN_X, Freedom.TURN_Y, Freedom.TURN_Z);

    public BeamEnd {
        released = Set.copyOf(released);
    }

    /** Held in the node, without offset. */
    public static BeamEnd fixed(int node) {
        return new BeamEnd(node, Vector3.ZERO, Set.of());
    }

    /** Without offset. */
    public static BeamEnd releasing(int node, Set<Freedom> released) {
        return new BeamEnd(node, Vector3.ZERO, released);
    }
}
