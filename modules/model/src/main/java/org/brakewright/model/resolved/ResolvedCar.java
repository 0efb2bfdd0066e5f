package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The car in SI.
 *
 * @param wheelbase m
 * @param frontTyreRadius rolling radius, m
 * @param rearTyreRadius rolling radius, m
 * @param grip brake force over load that the tyres can give
 * @param topSpeed m/s
 * @param loadCases at least one
 * @param aero forces of the air at one speed; empty when left out
 * @param engineBraking what the engine holds back; empty when left out
 * @param loadSensitivity grip lost per relative rise of axle load; empty when left out
 */
public record ResolvedCar(
        double wheelbase,
        double frontTyreRadius,
        double rearTyreRadius,
        double grip,
        double topSpeed,
        List<ResolvedLoadCase> loadCases,
        Optional<Aero> aero,
        Optional<EngineBraking> engineBraking,
        OptionalDouble loadSensitivity) {

    /**
     * Forces of the air at one speed.
     *
     * @param speed m/s
     * @param frontDownforce load it adds to the front axle, N; minus is lift
     * @param rearDownforce load it adds to the rear axle, N
     * @param drag N
     */
    public record Aero(double speed, double frontDownforce, double rearDownforce, double drag) {}

    /**
     * What the engine holds back.
     *
     * @param drivenAxle axle it acts on
     * @param force N at the road
     */
    public record EngineBraking(AxleEnd drivenAxle, double force) {}

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
