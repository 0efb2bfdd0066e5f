package org.brakewright.kernel.structure;

import java.util.EnumSet;
import java.util.Set;

/** A node held by the ground in some of its freedoms, along the structure's axes. */
public record Support(int node, Set<Freedom> held) {
    public static final Set<Freedom> CLAMP = Set.copyOf(EnumSet.allOf(Freedom.class));

    /** Place held, free to turn: a point of a hinged edge, whichever way the edge runs. */
    public static final Set<Freedom> PIN = Set.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z);

    public Support {
        held = Set.copyOf(held);
    }
}
