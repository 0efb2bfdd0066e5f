package org.brakewright.drawing;

/** A line that can bound an area. */
public sealed interface Contour extends Mark permits Circle, Polyline {}
