package org.brakewright.kernel.structure.section;

/**
 * A point of a section where stress may be greatest.
 *
 * @param y across the section, from the centroid, m
 * @param z up the section, from the centroid, m
 */
public record Fibre(double y, double z) {}
