package org.brakewright.sheets.lines;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.HoseState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.PartKind;

/**
 * What is joined to what.
 *
 * @param parts by name, masters first in each circuit
 * @param links tubes and hoses
 */
record Network(Map<String, Part> parts, List<Link> links) {

    /** A part. */
    record Part(String name, PartKind kind, Circuit circuit, boolean bleeder) {}

    /** A tube or hose between two parts. */
    record Link(String name, String from, String to, boolean hose) {
        String other(String end) {
            return from.equals(end) ? to : from;
        }
    }

    /** Parts as a tree below a master: each under the part that it is fed by. */
    record Branch(Part part, boolean hose, List<Branch> next) {
        /** Ends of the tree. */
        int leaves() {
            return next.isEmpty() ? 1 : next.stream().mapToInt(Branch::leaves).sum();
        }

        /** Longest way to an end, in links. */
        int depth() {
            return next.stream().mapToInt(branch -> 1 + branch.depth()).max().orElse(0);
        }
    }

    static Network of(LinesState lines) {
        Map<String, Part> parts = new LinkedHashMap<>();
        lines.parts()
                .forEach(part ->
                        parts.put(part.name(), new Part(part.name(), part.kind(), part.circuit(), part.bleeder())));
        List<String> hoses = lines.hoses().stream().map(HoseState::name).toList();
        Map<String, String> starts = new LinkedHashMap<>();
        List<Link> links = new ArrayList<>();
        for (JointState joint : lines.joints()) {
            if (joint.atStart()) {
                starts.put(joint.line(), joint.part());
            }
        }
        for (JointState joint : lines.joints()) {
            if (!joint.atStart()) {
                String start = starts.getOrDefault(joint.line(), joint.part());
                links.add(new Link(joint.line(), start, joint.part(), hoses.contains(joint.line())));
            }
        }
        return new Network(Collections.unmodifiableMap(parts), List.copyOf(links));
    }

    /** One tree a master, by circuit; a line that closes a ring is left out of it. */
    List<Branch> trees() {
        List<Part> masters = parts.values().stream()
                .filter(part -> part.kind() == PartKind.MASTER)
                .sorted((one, other) -> one.circuit().compareTo(other.circuit()))
                .toList();
        return masters.stream().map(this::tree).toList();
    }

    private Branch tree(Part master) {
        Map<String, Branch> reached = new LinkedHashMap<>();
        Branch root = new Branch(master, false, new ArrayList<>());
        reached.put(master.name(), root);
        Queue<Branch> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            Branch now = open.remove();
            String name = now.part().name();
            for (Link link : links) {
                if (link.from().equals(name) || link.to().equals(name)) {
                    Part far = parts.get(link.other(name));
                    if (far != null && !reached.containsKey(far.name())) {
                        Branch branch = new Branch(far, link.hose(), new ArrayList<>());
                        now.next().add(branch);
                        reached.put(far.name(), branch);
                        open.add(branch);
                    }
                }
            }
        }
        return root;
    }
}
