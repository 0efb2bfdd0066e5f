package org.brakewright.kernel.structure;

import java.util.ArrayList;
import java.util.List;

/**
 * A structure at rest: nodes, elements, rigid links and supports. Nodes and elements are known by their number in the
 * list.
 *
 * @param nodes places, m
 */
public record StructureModel(
        List<Vector3> nodes, List<Element> elements, List<RigidLink> links, List<Support> supports) {
    public StructureModel {
        nodes = List.copyOf(nodes);
        elements = List.copyOf(elements);
        links = List.copyOf(links);
        supports = List.copyOf(supports);
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Collects a model; hands out the numbers of nodes and elements. */
    public static final class Builder {
        private final List<Vector3> nodes = new ArrayList<>();
        private final List<Element> elements = new ArrayList<>();
        private final List<RigidLink> links = new ArrayList<>();
        private final List<Support> supports = new ArrayList<>();

        private Builder() {}

        /** A node at a place in m; returns its number. */
        public int node(double x, double y, double z) {
            nodes.add(new Vector3(x, y, z));
            return nodes.size() - 1;
        }

        /** Returns the number of the element. */
        public int add(Element element) {
            elements.add(element);
            return elements.size() - 1;
        }

        public Builder link(int leader, int follower) {
            links.add(new RigidLink(leader, follower));
            return this;
        }

        public Builder support(Support support) {
            supports.add(support);
            return this;
        }

        public StructureModel build() {
            return new StructureModel(nodes, elements, links, supports);
        }
    }
}
