package org.brakewright.model.resolved;

import java.util.List;

/**
 * The car in SI.
 *
 * @param wheelbase m
 * @param frontTyreRadius rolling radius, m
 * @param rearTyreRadius rolling radius, m
 * @param grip brake force over load that the tyres can give
 * @param topSpeed m/s
 * @param loadCases at least one
 */
public record ResolvedCar(
        double wheelbase,
        double frontTyreRadius,
        double rearTyreRadius,
        double grip,
        double topSpeed,
        List<ResolvedLoadCase> loadCases) {

    /** The load case with the largest weight, which needs the most effort. */
    public ResolvedLoadCase heaviest() {
        ResolvedLoadCase heaviest = loadCases.getFirst();
        for (ResolvedLoadCase loadCase : loadCases) {
            if (loadCase.mass() > heaviest.mass()) {
                heaviest = loadCase;
            }
        }
        return heaviest;
    }
}
