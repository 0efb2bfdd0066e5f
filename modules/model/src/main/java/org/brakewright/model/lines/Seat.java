package org.brakewright.model.lines;

/** What a port presses an end against. */
public enum Seat {
    /** Inverted flare: a 42 to 45 degree cone deep in the port. */
    INVERTED_45,
    /** A male fitting with a 45 degree cone outside. */
    MALE_45,
    CONE_37,
    /** The hollow seat of ISO 4038. */
    CONVEX,
    /** The seat of ISO 13486. */
    ISO_DOUBLE,
    BANJO_FACE,
    FERRULE,
    /** No port: a bracket holds the socket of a hose, and a tube is screwed into it. */
    BRACKET
}
