package org.brakewright.kernel.structure;

/**
 * What the far side of a cut does to the near side, in the beam's axes.
 *
 * @param force x is tension, y and z are shear, N
 * @param moment x is torsion, y and z bend, N m
 */
public record SectionForces(Vector3 force, Vector3 moment) {}
