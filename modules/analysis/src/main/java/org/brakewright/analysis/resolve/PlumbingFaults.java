package org.brakewright.analysis.resolve;

import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.lines.LineGraph;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.lines.Plumbing;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Hose;
import org.brakewright.model.resolved.ResolvedLines.Part;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedLines.Tube;
import org.jspecify.annotations.Nullable;

/** Looks for what keeps lines from being made or followed, all of it. */
final class PlumbingFaults {
    private final Values values;
    private final Plumbing told;
    private final ResolvedLines lines;
    private final int before;

    PlumbingFaults(Values values, Plumbing told, ResolvedLines lines) {
        this.values = values;
        this.told = told;
        this.lines = lines;
        this.before = values.problems().size();
    }

    /** Whether there is none; reports every one. */
    boolean none() {
        for (int i = 0; i < lines.obstacles().size(); i++) {
            new ResolveObstacle(values)
                    .report("plumbing.obstacles[" + i + "]", lines.obstacles().get(i));
        }
        masters();
        for (int i = 0; i < lines.tubes().size(); i++) {
            String path = "plumbing.tubes[" + i + "]";
            Tube tube = lines.tubes().get(i);
            end(path + ".start", tube.start(), tube.points().getFirst());
            end(path + ".end", tube.end(), tube.points().getLast());
        }
        for (int i = 0; i < lines.hoses().size(); i++) {
            hose("plumbing.hoses[" + i + "]", lines.hoses().get(i));
        }
        boolean joined = values.problems().size() == before;
        RouteFaults routes = new RouteFaults(values, lines);
        for (int i = 0; i < lines.tubes().size(); i++) {
            routes.report(
                    "plumbing.tubes[" + i + "]",
                    told.tubes().get(i),
                    lines.tubes().get(i));
        }
        boolean found = values.problems().size() > before;
        if (joined && !found) {
            fed();
        }
        return values.problems().size() == before;
    }

    private void masters() {
        for (int i = 0; i < lines.parts().size(); i++) {
            Part part = lines.parts().get(i);
            boolean master = part.kind() == PartKind.MASTER;
            if (master != (part.circuit() != null)) {
                values.problem(
                        "plumbing.parts[" + i + "].circuit",
                        master ? "" : String.valueOf(part.circuit()),
                        master
                                ? part.name() + " is a master, and what it feeds is not told."
                                : part.name() + " is no master; what feeds it follows from the lines.",
                        master ? "front, rear or clutch" : "leave circuit out");
            }
        }
        if (lines.parts().stream().noneMatch(part -> part.kind() == PartKind.MASTER)) {
            values.problem(
                    "plumbing.parts",
                    "",
                    "No part is a master, so nothing feeds the lines.",
                    "one part of kind master");
        }
    }

    private void end(String path, LineEnd end, @Nullable Spot at) {
        Optional<Part> part = part(end.to());
        if (part.isEmpty()) {
            values.problem(
                    path + ".to",
                    end.to(),
                    "No part is named " + end.to() + ".",
                    String.join(", ", lines.parts().stream().map(Part::name).toList()));
        } else if (at != null && part.get().at().to(at) > RouteFaults.REACH) {
            values.problem(
                    path + ".to",
                    end.to(),
                    "The tube ends " + RouteFaults.millimetres(part.get().at().to(at)) + " from where " + end.to()
                            + " stands.",
                    "a part within " + RouteFaults.millimetres(RouteFaults.REACH) + " of this end");
        }
    }

    private void hose(String path, Hose hose) {
        end(path + ".start", hose.start(), null);
        end(path + ".end", hose.end(), null);
        Optional<Part> start = part(hose.start().to());
        Optional<Part> end = part(hose.end().to());
        if (start.isPresent() && end.isPresent()) {
            double straight = start.get().at().to(end.get().at());
            if (straight > hose.length()) {
                values.problem(
                        path + ".length",
                        RouteFaults.millimetres(hose.length()),
                        hose.name() + " does not reach: its parts stand " + RouteFaults.millimetres(straight)
                                + " apart.",
                        "longer than that, with slack for full lock and droop");
            }
        }
    }

    private void fed() {
        LineGraph graph = new LineGraph(lines);
        List<Part> parts = lines.parts();
        for (int i = 0; i < parts.size(); i++) {
            works(graph, "plumbing.parts[" + i + "]", parts.get(i));
            String name = parts.get(i).name();
            if (graph.fed(name) == null) {
                values.problem(
                        "plumbing.parts[" + i + "]",
                        name,
                        "No line leads from a master to " + name + ".",
                        "a line to it");
            }
            if (graph.crossed().contains(name)) {
                values.problem(
                        "plumbing.parts[" + i + "]",
                        name,
                        "Two circuits meet at " + name + ": one leak would empty both.",
                        "lines of one circuit");
            }
        }
    }

    /** A master that works nothing leaves its brakes to the other circuit: one leak would then empty all. */
    private void works(LineGraph graph, String path, Part part) {
        boolean works = lines.parts().stream()
                .filter(other -> other.kind().works())
                .map(other -> graph.fed(other.name()))
                .anyMatch(fed -> fed != null && fed.circuit() == part.circuit());
        if (part.kind() == PartKind.MASTER && !works) {
            values.problem(
                    path,
                    part.name(),
                    "No line leads from " + part.name() + " to a brake or a clutch: its circuit works nothing.",
                    "a line from it to what it works");
        }
    }

    private Optional<Part> part(String name) {
        return lines.parts().stream().filter(part -> part.name().equals(name)).findFirst();
    }
}
