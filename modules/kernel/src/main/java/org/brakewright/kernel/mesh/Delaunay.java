package org.brakewright.kernel.mesh;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.triangulate.IncrementalDelaunayTriangulator;
import org.locationtech.jts.triangulate.quadedge.QuadEdge;
import org.locationtech.jts.triangulate.quadedge.QuadEdgeSubdivision;
import org.locationtech.jts.triangulate.quadedge.Vertex;

/** A Delaunay triangulation that grows node by node inside a large frame. */
final class Delaunay {
    /** A corner of triangles; corners of the frame are no nodes. */
    private static final class Node extends Vertex {
        private final int number;

        private Node(Spot at, int number) {
            super(at.x(), at.y());
            this.number = number;
        }
    }

    /** A triangle of three nodes that turn left, and the edge from a to b by which it is found again. */
    record Facet(QuadEdge edge, int a, int b, int c) {
        /** Whether later nodes have left it as it was. */
        boolean stands() {
            return edge.isLive()
                    && number(edge.orig()) == a
                    && number(edge.dest()) == b
                    && number(edge.lNext().dest()) == c;
        }
    }

    private final List<Spot> spots = new ArrayList<>();
    private final QuadEdgeSubdivision subdivision;
    private final IncrementalDelaunayTriangulator triangulator;

    Delaunay(Ring outline) {
        Envelope around = new Envelope();
        outline.corners().forEach(corner -> around.expandToInclude(corner.x(), corner.y()));
        subdivision = new QuadEdgeSubdivision(around, Mesher.TOUCH / 10);
        triangulator = new IncrementalDelaunayTriangulator(subdivision);
        triangulator.forceConvex(false);
    }

    List<Spot> spots() {
        return spots;
    }

    Spot spot(int node) {
        return spots.get(node);
    }

    /** Adds a node; returns the triangles around it. */
    List<Facet> add(Spot at) {
        QuadEdge first = triangulator.insertSite(new Node(at, spots.size()));
        spots.add(at);
        QuadEdge spoke = number(first.orig()) == spots.size() - 1 ? first : first.sym();
        List<Facet> star = new ArrayList<>();
        QuadEdge edge = spoke;
        do {
            collect(edge, star);
            edge = edge.oNext();
        } while (!edge.equals(spoke));
        return star;
    }

    /** Every triangle of three nodes, once. */
    List<Facet> facets() {
        List<Facet> facets = new ArrayList<>();
        for (Object each : subdivision.getTriangleEdges(false)) {
            collect(((QuadEdge[]) each)[0], facets);
        }
        return facets;
    }

    private static void collect(QuadEdge edge, List<Facet> facets) {
        Facet facet = new Facet(
                edge,
                number(edge.orig()),
                number(edge.dest()),
                number(edge.lNext().dest()));
        if (Math.min(facet.a(), Math.min(facet.b(), facet.c())) >= 0) {
            facets.add(facet);
        }
    }

    private static int number(Vertex vertex) {
        return vertex instanceof Node node ? node.number : -1;
    }
}
