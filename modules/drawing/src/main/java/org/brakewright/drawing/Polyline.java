package org.brakewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Edges end to end, straight or round; when closed, the last corner leads back to the first. */
public record Polyline(List<Vertex> vertices, boolean closed, Stroke stroke) implements Contour {
    public Polyline {
        vertices = List.copyOf(vertices);
        if (vertices.size() < 2) {
            throw new IllegalArgumentException("vertices must be 2 or more, are " + vertices.size());
        }
    }

    /** A closed line with straight edges. */
    public static Polyline closed(Stroke stroke, Point... corners) {
        return new Polyline(straight(corners), true, stroke);
    }

    /** An open line with straight edges. */
    public static Polyline open(Stroke stroke, Point... corners) {
        return new Polyline(straight(corners), false, stroke);
    }

    /** The edges in order, each with the place it leads to. */
    public List<Edge> edges() {
        var edges = new ArrayList<Edge>();
        for (int i = 0; i < vertices.size() - (closed ? 0 : 1); i++) {
            Vertex from = vertices.get(i);
            edges.add(
                    new Edge(from.at(), vertices.get((i + 1) % vertices.size()).at(), from.bulge()));
        }
        return List.copyOf(edges);
    }

    private static List<Vertex> straight(Point... corners) {
        return Stream.of(corners).map(corner -> new Vertex(corner, 0)).toList();
    }
}
