package org.brakewright.drawing.outline;

import org.brakewright.drawing.Contour;

/** A hole and the name its faults are reported under. */
public record Hole(String name, Contour contour) {}
