package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.brakewright.analysis.lines.LinesState.AirKind;
import org.brakewright.analysis.lines.LinesState.AirTrap;
import org.brakewright.kernel.tubing.CentreLine;
import org.brakewright.kernel.tubing.Point;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Hose;
import org.brakewright.model.resolved.ResolvedLines.Part;
import org.brakewright.model.resolved.ResolvedLines.Tube;

/**
 * Where air stays: high points from which every way to a bleeder or a reservoir first leads down. How far it leads down
 * is the rise, by the way whose lowest point is highest.
 */
final class AirTraps {
    private final List<Node> nodes = new ArrayList<>();
    private final Map<String, Integer> parts = new LinkedHashMap<>();

    /** A place in the fluid with its neighbours. */
    private record Node(String where, Point at, boolean outlet, List<Integer> next) {}

    private AirTraps(ResolvedLines lines) {
        for (Part part : lines.parts()) {
            boolean outlet = part.bleeder() || part.kind() == PartKind.MASTER;
            parts.put(part.name(), add(part.name(), Places.point(part.at()), outlet));
        }
        lines.tubes().forEach(this::tube);
        lines.hoses().forEach(this::hose);
    }

    /** Every place whose rise is more than so much (m). */
    static List<AirTrap> of(ResolvedLines lines, double least) {
        return new AirTraps(lines).traps(least);
    }

    private List<AirTrap> traps(double least) {
        double[] best = best();
        List<AirTrap> traps = new ArrayList<>();
        boolean[] told = new boolean[nodes.size()];
        List<Integer> highest = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            highest.add(i);
        }
        // A part stands where its tube ends: of two as high, the one with the fewest ways on tells the trap.
        highest.sort(Comparator.comparingDouble((Integer i) -> height(i))
                .reversed()
                .thenComparingInt(i -> nodes.get(i).next().size()));
        for (int i : highest) {
            double rise = height(i) - best[i];
            if (rise > least && !told[i]) {
                flood(i, best[i], told);
                traps.add(trap(i, rise));
            }
        }
        return List.copyOf(traps);
    }

    /** One bubble is one trap: all that lies above its way out and hangs together is told with it. */
    private void flood(int from, double above, boolean[] told) {
        List<Integer> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            int now = open.removeLast();
            if (!told[now] && height(now) > above) {
                told[now] = true;
                open.addAll(nodes.get(now).next());
            }
        }
    }

    private AirTrap trap(int index, double rise) {
        Node node = nodes.get(index);
        AirKind kind = node.next().size() <= 1 ? AirKind.CLOSED_END : AirKind.HIGH_POINT;
        return new AirTrap(node.where(), kind, Places.spot(node.at()), rise);
    }

    /** For every place the highest lowest point (m) of a way out. */
    private double[] best() {
        double[] best = new double[nodes.size()];
        Arrays.fill(best, Double.NEGATIVE_INFINITY);
        PriorityQueue<Integer> next = new PriorityQueue<>(
                Comparator.comparingDouble((Integer i) -> best[i]).reversed());
        for (int i = 0; i < best.length; i++) {
            if (nodes.get(i).outlet()) {
                best[i] = height(i);
                next.add(i);
            }
        }
        while (!next.isEmpty()) {
            int now = next.remove();
            for (int neighbour : nodes.get(now).next()) {
                double through = Math.min(best[now], height(neighbour));
                if (through > best[neighbour]) {
                    best[neighbour] = through;
                    next.add(neighbour);
                }
            }
        }
        return best;
    }

    private double height(int index) {
        return nodes.get(index).at().z();
    }

    private int add(String where, Point at, boolean outlet) {
        nodes.add(new Node(where, at, outlet, new ArrayList<>()));
        return nodes.size() - 1;
    }

    private void join(int one, int other) {
        nodes.get(one).next().add(other);
        nodes.get(other).next().add(one);
    }

    private void tube(Tube tube) {
        int before = parts.getOrDefault(tube.start().to(), 0);
        for (Point point : CentreLine.of(Places.route(tube)).points()) {
            int now = add(tube.name(), point, false);
            join(before, now);
            before = now;
        }
        join(before, parts.getOrDefault(tube.end().to(), 0));
    }

    /** How a hose hangs is not known: it is taken to run straight. */
    private void hose(Hose hose) {
        join(
                parts.getOrDefault(hose.start().to(), 0),
                parts.getOrDefault(hose.end().to(), 0));
    }
}
