package org.brakewright.model.lines;

/** What lines keep clear of, as a simple envelope. */
public sealed interface Obstacle permits RoundBar, Box, Ball {
    /** The builder's name. */
    String name();

    /** What makes it matter. */
    Nearness near();
}
