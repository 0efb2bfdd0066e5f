package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import org.brakewright.kernel.tubing.BendTable;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Part;
import org.jspecify.annotations.Nullable;

/** Which part is fed by which master, and over how long a way. */
public final class LineGraph {
    private final Map<String, List<Branch>> branches = new LinkedHashMap<>();
    private final Map<String, Fed> fed = new LinkedHashMap<>();
    private final List<Fed> crossed = new ArrayList<>();

    /**
     * A line from part to part.
     *
     * @param name of tube or hose
     * @param length m
     */
    record Branch(String name, String to, double length) {}

    /**
     * What feeds a part.
     *
     * @param part its name
     * @param way from the master, m
     */
    public record Fed(String part, Circuit circuit, double way) {}

    /** The graph of lines whose ends all go to known parts. */
    public LineGraph(ResolvedLines lines) {
        lines.parts().forEach(part -> branches.put(part.name(), new ArrayList<>()));
        lines.tubes()
                .forEach(tube -> join(
                        tube.name(),
                        tube.start().to(),
                        tube.end().to(),
                        BendTable.of(Places.route(tube)).developedLength()));
        lines.hoses()
                .forEach(hose -> join(hose.name(), hose.start().to(), hose.end().to(), hose.length()));
        feed(lines.parts());
    }

    /** What feeds a part; null when no master does. */
    public @Nullable Fed fed(String part) {
        return fed.get(part);
    }

    /** Parts at which two circuits meet. */
    public List<String> crossed() {
        return crossed.stream().map(Fed::part).distinct().toList();
    }

    /** Lines at a part. */
    List<Branch> at(String part) {
        return branches.getOrDefault(part, List.of());
    }

    private void join(String name, String from, String to, double length) {
        Stream.of(from, to).forEach(part -> branches.computeIfAbsent(part, _ -> new ArrayList<>()));
        at(from).add(new Branch(name, to, length));
        at(to).add(new Branch(name, from, length));
    }

    /** Nearest first (Dijkstra), so that each part gets its shortest way. */
    private void feed(List<Part> parts) {
        PriorityQueue<Fed> next = new PriorityQueue<>(Comparator.comparingDouble(Fed::way));
        for (Part part : parts) {
            if (part.circuit() != null) {
                next.add(new Fed(part.name(), part.circuit(), 0));
            }
        }
        while (!next.isEmpty()) {
            Fed now = next.remove();
            Fed before = fed.putIfAbsent(now.part(), now);
            if (before == null) {
                at(now.part())
                        .forEach(branch -> next.add(new Fed(branch.to(), now.circuit(), now.way() + branch.length())));
            } else if (before.circuit() != now.circuit()) {
                crossed.add(now);
            }
        }
    }
}
