package org.brakewright.model.mount;

/** Cross-section of a bar by its dimensions. */
public sealed interface Profile permits RoundTube, RoundBar, SquareTube, RectangularTube, FlatBar, Angle, Channel {}
