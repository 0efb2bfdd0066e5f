package org.brakewright.model.resolved;

/**
 * One state of load in SI.
 *
 * @param name the builder's name for it
 * @param frontMass what the front axle's scale reads, kg
 * @param rearMass what the rear axle's scale reads, kg
 * @param cgHeight height of the centre of gravity over the ground, m
 */
public record ResolvedLoadCase(String name, double frontMass, double rearMass, double cgHeight) {

    /** Mass of the car in this state, kg. */
    public double mass() {
        return frontMass + rearMass;
    }
}
