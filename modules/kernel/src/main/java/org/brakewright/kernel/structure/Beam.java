package org.brakewright.kernel.structure;

import java.util.HashSet;
import java.util.Set;

/**
 * A straight bar that stretches, bends and twists; slender, so shear does not bend it.
 *
 * @param up a direction not along the beam; the section's z axis lies in the plane of both, x from start to end
 */
public record Beam(String part, BeamEnd start, BeamEnd end, Vector3 up, BeamProperty property) implements Element {
    public Beam {
        Set<Freedom> both = new HashSet<>(start.released());
        both.addAll(end.released());
        boolean slides = both.removeAll(Support.PIN);
        Require.that(!slides || both.isEmpty(), "released", both.size(), "must not turn where the beam slides");
        slides = start.released().stream().anyMatch(end.released()::contains) && both.isEmpty();
        Require.that(!slides, "released", 2, "must not slide at both ends");
    }

    @Override
    public int[] nodes() {
        return new int[] {start.node(), end.node()};
    }
}
