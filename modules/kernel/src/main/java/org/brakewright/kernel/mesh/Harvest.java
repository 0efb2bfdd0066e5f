package org.brakewright.kernel.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakewright.kernel.mesh.Delaunay.Facet;

/** Reads the mesh out of a finished triangulation: triangles in the panel, nodes in the order they came. */
final class Harvest {
    private final PanelPlan plan;
    private final List<Spot> nodes = new ArrayList<>();
    private final List<Triangle> triangles;

    Harvest(PanelPlan plan, Inside inside, Delaunay delaunay) {
        this.plan = plan;
        List<Facet> facets = delaunay.facets().stream()
                .filter(facet -> inside.holds(
                        middle(facet, delaunay).x(), middle(facet, delaunay).y()))
                .toList();
        int[] numbers = numbers(facets, delaunay.spots());
        List<Inside> regions = plan.regions().stream().map(Inside::of).toList();
        triangles = facets.stream()
                .map(facet -> triangle(facet, numbers, names(middle(facet, delaunay), regions)))
                .sorted(Comparator.comparingInt(Triangle::a)
                        .thenComparingInt(Triangle::b)
                        .thenComparingInt(Triangle::c))
                .toList();
    }

    PanelMesh mesh() {
        Map<String, Integer> points = new LinkedHashMap<>();
        plan.points().forEach(point -> points.put(point.name(), nearest(point.at())));
        Map<String, List<Integer>> lines = new LinkedHashMap<>();
        plan.lines().forEach(line -> lines.put(line.name(), Skeleton.chain(line, nodes)));
        Map<String, List<List<Integer>>> rims = new LinkedHashMap<>();
        Stream.concat(Stream.of(plan.outline()), plan.holes().stream())
                .forEach(ring -> rims.put(
                        ring.name(),
                        ring.sides().stream()
                                .map(side -> Skeleton.chain(side, nodes))
                                .toList()));
        return new PanelMesh(nodes, triangles, points, lines, rims);
    }

    private int[] numbers(List<Facet> facets, List<Spot> spots) {
        int[] numbers = new int[spots.size()];
        Arrays.fill(numbers, -1);
        facets.forEach(facet -> numbers[facet.a()] = numbers[facet.b()] = numbers[facet.c()] = 0);
        for (int i = 0; i < numbers.length; i++) {
            if (numbers[i] == 0) {
                numbers[i] = nodes.size();
                nodes.add(spots.get(i));
            }
        }
        return numbers;
    }

    /** Begins with its least node. */
    private static Triangle triangle(Facet facet, int[] numbers, List<String> regions) {
        int a = numbers[facet.a()];
        int b = numbers[facet.b()];
        int c = numbers[facet.c()];
        if (b < a && b < c) {
            return new Triangle(b, c, a, regions);
        }
        return c < a && c < b ? new Triangle(c, a, b, regions) : new Triangle(a, b, c, regions);
    }

    private List<String> names(Spot middle, List<Inside> regions) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < regions.size(); i++) {
            if (regions.get(i).holds(middle.x(), middle.y())) {
                names.add(plan.regions().get(i).name());
            }
        }
        return names;
    }

    private static Spot middle(Facet facet, Delaunay delaunay) {
        return Shape.of(delaunay.spot(facet.a()), delaunay.spot(facet.b()), delaunay.spot(facet.c()))
                .middle();
    }

    private int nearest(Spot at) {
        return Skeleton.number(nodes, at);
    }
}
