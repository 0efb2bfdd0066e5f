package org.brakewright.analysis.lines;

/** Why an end must not be screwed into a port. */
public enum Misfit {
    /** The cone is 37 degrees and the seat is not, or the reverse; threads are often the same, and it leaks. */
    CONE_ANGLE,
    /** A bubble in a port without its hollow seat, or another flare on that seat. */
    CONVEX_SEAT,
    /** The metric double flare and the inch one: alike to the eye, nut and port are not. */
    ISO_AND_SAE,
    /** A banjo and a cone. */
    BANJO,
    /** A socket without a tube, or a bracket that holds no socket. */
    SOCKET,
    /** The nut's thread is not the port's. */
    THREAD,
    /** A metric nut in an inch port of nearly the same size, or the reverse: it starts, then strips. */
    THREAD_NEAR,
    /** The nut is bored for another tube, 6 mm and 1/4 in for instance. */
    NUT_BORE,
    /** A single 45 degree flare on brake tube: its seats are made for double flares. */
    SINGLE_45,
    /** A ferrule pinched round the tube: not for brakes. */
    COMPRESSION,
    /** The wall is thicker than the standard double-flares. */
    WALL
}
