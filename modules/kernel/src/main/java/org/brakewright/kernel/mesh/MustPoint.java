package org.brakewright.kernel.mesh;

/** A place that must become a node: a bolt or where a load enters. */
public record MustPoint(String name, Spot at) {}
