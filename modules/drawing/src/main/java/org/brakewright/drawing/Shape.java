package org.brakewright.drawing;

/** Anything that can stand on a drawing. */
public sealed interface Shape permits Mark, Dimension, Table, Figure {}
