package org.brakewright.kernel.structure;

/**
 * Where an element takes hold: at the tip of a stiff arm from a node.
 *
 * @param node that leads
 * @param arm from the node to the tip, m
 */
record Joint(int node, Vector3 arm) {
    /** How the tip moves when the nodes move as given, six numbers a node. */
    Motion motion(double[] freedoms) {
        Motion leader = Motion.at(freedoms, 6 * node);
        return new Motion(leader.shift().plus(leader.turn().cross(arm)), leader.turn());
    }

    /** Adds a force and moment at the tip to those on the nodes. */
    void push(Wrench atTip, double[] forces) {
        Vector3 moment = atTip.moment().plus(arm.cross(atTip.force()));
        new Wrench(atTip.force(), moment).addTo(forces, 6 * node);
    }

    Joint further(Vector3 more) {
        return new Joint(node, arm.plus(more));
    }
}
