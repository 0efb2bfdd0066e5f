package org.brakewright.drawing.outline;

import org.brakewright.drawing.Point;

/** Why an outline cannot be cut as it is. Contours are told by name, edges by number, from 1; a circle has edge 1. */
public sealed interface OutlineFault {
    /**
     * The last corner does not lead back to the first.
     *
     * @param gap between the two, mm
     */
    record NotClosed(String contour, double gap) implements OutlineFault {}

    /** Too few edges to bound an area. */
    record NoArea(String contour) implements OutlineFault {}

    /** Two corners in a row are the same. */
    record ZeroEdge(String contour, int edge, Point at) implements OutlineFault {}

    /** Two edges, of one contour or of two, cross, touch or lie on one another; {@code at} is where. */
    record Crossing(String contour, int edge, String other, int otherEdge, Point at) implements OutlineFault {}

    /** A hole lies outside the part. */
    record HoleOutside(String hole, String outline) implements OutlineFault {}

    /** A hole lies within another hole. */
    record HoleInHole(String hole, String other) implements OutlineFault {}
}
