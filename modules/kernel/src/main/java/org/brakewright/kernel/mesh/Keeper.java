package org.brakewright.kernel.mesh;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.brakewright.kernel.mesh.Skeleton.Piece;

/**
 * The parts into which the pieces of the skeleton are cut, so that no node lies in the circle over a part: then the
 * part is an edge of the Delaunay triangulation.
 */
final class Keeper {
    /** Shorter parts are left as they are, m. */
    static final double LEAST = 1e-5;

    private static final int NONE = -1;

    /** A part of a piece, by its end nodes and the number of the piece. */
    record Part(int from, int to, int piece) {}

    private final List<Piece> pieces;
    private final List<Spot> spots;
    private final boolean[] sharp;
    private final Set<Part> parts = new LinkedHashSet<>();
    private final List<Integer> pieceOfNode = new ArrayList<>();

    /**
     * @param spots grows while nodes are added
     */
    Keeper(List<Piece> pieces, List<Spot> spots) {
        this.pieces = pieces;
        this.spots = spots;
        this.sharp = new boolean[spots.size()];
        for (int i = 0; i < pieces.size(); i++) {
            parts.add(new Part(pieces.get(i).from(), pieces.get(i).to(), i));
            for (int j = 0; j < i; j++) {
                mark(pieces.get(i), pieces.get(j));
            }
        }
        spots.forEach(spot -> pieceOfNode.add(NONE));
    }

    private void mark(Piece one, Piece other) {
        int apex = shared(one, other);
        if (apex != NONE) {
            Spot a = spots.get(one.from() == apex ? one.to() : one.from());
            Spot b = spots.get(other.from() == apex ? other.to() : other.from());
            Spot at = spots.get(apex);
            double cosine = dot(at, a, b) / (at.to(a) * at.to(b));
            sharp[apex] |= cosine > Math.cos(Mesher.SHARP) + 1e-9;
        }
    }

    private static int shared(Piece one, Piece other) {
        if (one.from() == other.from() || one.from() == other.to()) {
            return one.from();
        }
        return one.to() == other.from() || one.to() == other.to() ? one.to() : NONE;
    }

    private static double dot(Spot at, Spot a, Spot b) {
        return (a.x() - at.x()) * (b.x() - at.x()) + (a.y() - at.y()) * (b.y() - at.y());
    }

    Collection<Part> parts() {
        return parts;
    }

    boolean has(Part part) {
        return parts.contains(part);
    }

    double length(Part part) {
        return spots.get(part.from()).to(spots.get(part.to()));
    }

    Spot middle(Part part) {
        return spots.get(part.from()).towards(spots.get(part.to()), 0.5);
    }

    /** Parts over which a spot lies in the circle. */
    List<Part> crowdedBy(Spot spot) {
        return parts.stream().filter(part -> crowds(spot, part)).toList();
    }

    boolean isCrowded(Part part) {
        return spots.stream().anyMatch(spot -> crowds(spot, part));
    }

    private boolean crowds(Spot spot, Part part) {
        double length = length(part);
        return dot(spot, spots.get(part.from()), spots.get(part.to())) < -1e-9 * length * length;
    }

    /**
     * Where to cut a part: in the middle, but near a sharp corner at a power of two from it, so that cuts on both
     * sides of the corner match and do not call for one another without end.
     */
    Spot cut(Part part) {
        boolean fromSharp = isSharp(part.from());
        boolean toSharp = isSharp(part.to());
        if (fromSharp == toSharp) {
            return middle(part);
        }
        double length = length(part);
        double reach = Math.scalb(1.0, Math.getExponent(length * 2 / 3));
        double share = reach / length;
        return spots.get(part.from()).towards(spots.get(part.to()), fromSharp ? share : 1 - share);
    }

    private boolean isSharp(int node) {
        return node < sharp.length && sharp[node];
    }

    /** Replaces a part by two; returns them. */
    List<Part> replace(Part part, int node) {
        parts.remove(part);
        List<Part> halves = List.of(new Part(part.from(), node, part.piece()), new Part(node, part.to(), part.piece()));
        parts.addAll(halves);
        pieceOfNode.set(node, part.piece());
        return halves;
    }

    /** To be told of every new node. */
    void added() {
        pieceOfNode.add(NONE);
    }

    /** Whether two nodes lie on the two sides of a sharp corner: the edge between them can only be short. */
    boolean acrossSharp(int one, int other) {
        int first = pieceOfNode.get(one);
        int second = pieceOfNode.get(other);
        if (first == NONE || second == NONE || first == second) {
            return false;
        }
        int apex = shared(pieces.get(first), pieces.get(second));
        return apex != NONE && isSharp(apex);
    }
}
