package org.brakewright.kernel.structure;

import java.util.List;

/** How a solve ended. */
public sealed interface StructureOutcome {
    /** One result for each load case, in their order. */
    record Solved(List<CaseResult> cases) implements StructureOutcome {
        public Solved {
            cases = List.copyOf(cases);
        }
    }

    /**
     * Something can move without resistance.
     *
     * @param part the part of an element at the node that moves most; empty when no element touches it
     * @param parts all that move along
     * @param node the node that moves most
     * @param freedom the way in which it moves most
     * @param motion how it moves; only the proportions count
     */
    record Loose(String part, List<String> parts, int node, Freedom freedom, Motion motion)
            implements StructureOutcome {
        public Loose {
            parts = List.copyOf(parts);
        }
    }

    /** The model or a load case contradicts itself. */
    record Refused(List<Fault> faults) implements StructureOutcome {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
