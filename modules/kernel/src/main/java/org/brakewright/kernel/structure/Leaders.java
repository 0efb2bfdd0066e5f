package org.brakewright.kernel.structure;

import java.util.Arrays;
import java.util.List;

/** Which node leads each node in the end: itself, unless rigid links tie it to another. */
final class Leaders {
    private final Joint[] joints;

    private Leaders(Joint[] joints) {
        this.joints = joints;
    }

    /** Of a model whose links name known nodes, each following once and none itself. */
    static Leaders of(StructureModel model) {
        int[] next = directLeaders(model.nodes().size(), model.links());
        Joint[] joints = new Joint[next.length];
        Arrays.setAll(joints, node -> {
            int leader = last(next, node);
            return new Joint(leader, model.nodes().get(node).minus(model.nodes().get(leader)));
        });
        return new Leaders(joints);
    }

    /** The node that each node follows, or itself. */
    static int[] directLeaders(int nodes, List<RigidLink> links) {
        int[] next = new int[nodes];
        Arrays.setAll(next, node -> node);
        for (RigidLink link : links) {
            next[link.follower()] = link.leader();
        }
        return next;
    }

    private static int last(int[] next, int node) {
        int at = node;
        while (next[at] != at) {
            at = next[at];
        }
        return at;
    }

    Joint joint(int node) {
        return joints[node];
    }

    int nodes() {
        return joints.length;
    }
}
