package org.brakewright.analysis.hydraulics;

/**
 * A master's piston, or one chamber of a tandem.
 *
 * @param push on it, N
 * @param pressure in front of it, Pa
 * @param stroke from rest, m
 */
public record PistonState(double push, double pressure, double stroke) {}
