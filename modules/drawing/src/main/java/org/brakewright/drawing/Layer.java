package org.brakewright.drawing;

/** What a mark is for; the name is the layer's name in a DXF file and the group's in an SVG file. */
public enum Layer {
    /** The edge to cut. */
    OUTLINE,
    HOLES,
    BEND,
    CENTRE,
    DIMENSION,
    TEXT,
    /** Check bars and register marks: to measure, never to cut. */
    CHECK,
    /** Frame and title block. */
    FRAME,
    /** Words that forbid to cut. */
    STAMP
}
