package org.brakewright.kernel.structure;

/** What acts on a structure; vectors in the structure's axes. */
public sealed interface Load {
    /** Force and moment on a node. */
    record OnNode(int node, Wrench wrench) implements Load {}

    /**
     * A force spread evenly along a beam.
     *
     * @param element number of the beam
     * @param perLength N/m
     */
    record OnBeam(int element, Vector3 perLength) implements Load {}

    /**
     * A force spread evenly over a shell triangle, as weight or pressure; a third goes to each node.
     *
     * @param element number of the shell
     * @param perArea N/m2
     */
    record OnShell(int element, Vector3 perArea) implements Load {}

    /**
     * A support that gives way.
     *
     * @param held one of the freedoms that the support holds
     * @param amount m or rad
     */
    record Settlement(int node, Freedom held, double amount) implements Load {
        public Settlement {
            Require.finite("amount", amount);
        }
    }
}
