package org.brakewright.drawing;

/** What a writer has to know: every shape is made of these. */
public sealed interface Mark extends Shape permits Line, Arc, Contour, Text {}
