package org.brakewright.kernel.mesh;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A panel cut into triangles. Nodes are known by their number in the list.
 *
 * @param points node of each point of the plan, by name
 * @param lines nodes along each line of the plan from start to end, by name
 * @param rims for the outline and each hole, by name: nodes along each side, side i from corner i to the next
 */
public record PanelMesh(
        List<Spot> nodes,
        List<Triangle> triangles,
        Map<String, Integer> points,
        Map<String, List<Integer>> lines,
        Map<String, List<List<Integer>>> rims) {
    public PanelMesh {
        nodes = List.copyOf(nodes);
        triangles = List.copyOf(triangles);
        points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
        lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
        rims = Collections.unmodifiableMap(new LinkedHashMap<>(rims));
    }

    /** The node of a point of the plan; an unknown name is the programmer's fault. */
    public int point(String name) {
        return known(points, name);
    }

    /** The nodes along a line of the plan; an unknown name is the programmer's fault. */
    public List<Integer> line(String name) {
        return known(lines, name);
    }

    /** The nodes along each side of the outline or a hole; an unknown name is the programmer's fault. */
    public List<List<Integer>> rim(String name) {
        return known(rims, name);
    }

    private static <T> T known(Map<String, T> all, String name) {
        T found = all.get(name);
        if (found == null) {
            throw new IllegalArgumentException("name must be one of " + all.keySet() + ", but is " + name);
        }
        return found;
    }

    /** Twice the area with its sign, m2. */
    double doubled(Triangle t) {
        Spot a = nodes.get(t.a());
        Spot b = nodes.get(t.b());
        Spot c = nodes.get(t.c());
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    /** m2. */
    public double area(Triangle triangle) {
        return doubled(triangle) / 2;
    }

    /** m2. */
    public double area() {
        return triangles.stream().mapToDouble(this::area).sum();
    }

    public MeshQuality quality() {
        return MeshQuality.of(this);
    }
}
