package org.brakewright.drawing;

/** A straight line. */
public record Line(Point from, Point to, Stroke stroke) implements Mark {}
