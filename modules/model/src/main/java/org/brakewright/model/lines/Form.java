package org.brakewright.model.lines;

/** How the end of a tube or hose is formed. */
public enum Form {
    /** 45 degrees, folded back on itself. */
    DOUBLE_45,
    SINGLE_45,
    /** 37 degrees, with a sleeve. */
    SINGLE_37,
    /** The convex or bubble flare of ISO 4038. */
    CONVEX,
    /** The metric double flare of ISO 13486. */
    ISO_DOUBLE,
    BANJO,
    /** A ferrule pinched round the tube. */
    COMPRESSION,
    /** A socket into which a tube is screwed; the tube's own end tells that joint. */
    FEMALE
}
