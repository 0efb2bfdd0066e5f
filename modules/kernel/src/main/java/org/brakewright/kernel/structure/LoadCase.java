package org.brakewright.kernel.structure;

import java.util.List;

/** Loads that act together. */
public record LoadCase(String name, List<Load> loads) {
    public LoadCase {
        loads = List.copyOf(loads);
    }

    public static LoadCase of(String name, Load... loads) {
        return new LoadCase(name, List.of(loads));
    }
}
