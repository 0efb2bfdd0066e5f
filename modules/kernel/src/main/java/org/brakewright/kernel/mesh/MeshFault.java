package org.brakewright.kernel.mesh;

/**
 * What is wrong with a plan, and where.
 *
 * @param name of the ring, point or line it concerns
 * @param other the second one it concerns; empty when there is none
 * @param at a spot where it shows
 */
public record MeshFault(Kind kind, String name, String other, Spot at) {
    /** The kinds of fault. */
    public enum Kind {
        /** Two points, lines or rings have this name. */
        NAME_TWICE,
        /** The ring has fewer than three corners, so it encloses nothing. */
        RING_OPEN,
        /** The side or line is shorter than {@link Mesher#TOUCH}: two corners fall on one place. */
        TOO_SHORT,
        /** The ring crosses or touches itself. */
        RING_CROSSES_ITSELF,
        /** The hole is not whole inside the outline, or touches it. */
        HOLE_OUTSIDE,
        /** The hole overlaps or touches the other hole. */
        HOLES_OVERLAP,
        /** The region is not whole inside the outline. */
        REGION_OUTSIDE,
        /** The point lies outside the outline. */
        POINT_OUTSIDE,
        /** The point lies in the other, a hole. */
        POINT_IN_HOLE,
        /** The line leaves the outline. */
        LINE_OUTSIDE,
        /** The line crosses the other, a hole. */
        LINE_CROSSES_HOLE,
        /** More than {@link Mesher#MOST_NODES} nodes would be needed. */
        TOO_FINE
    }
}
