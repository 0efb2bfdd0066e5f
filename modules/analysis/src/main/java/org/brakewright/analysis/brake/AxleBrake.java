package org.brakewright.analysis.brake;

import org.brakewright.kernel.friction.DiscBrake;
import org.brakewright.kernel.friction.DrumBrake;
import org.brakewright.model.resolved.ResolvedBrake;

/** From line pressure to brake force of one axle. */
public sealed interface AxleBrake {

    /** Brake force of both wheels at the ground, N, for a line pressure in Pa, as long as the wheels turn. */
    double force(double pressure);

    /** Line pressure below which there is no force, Pa. */
    double thresholdPressure();

    /** The brake of an axle on tyres of a rolling radius in m. */
    static AxleBrake of(ResolvedBrake brake, double tyreRadius) {
        return switch (brake) {
            case ResolvedBrake.Disc disc ->
                new Discs(
                        new DiscBrake(
                                disc.pistonArea(), disc.friction(), disc.effectiveRadius(), disc.thresholdPressure()),
                        tyreRadius);
            case ResolvedBrake.Drum drum ->
                new Drums(
                        new DrumBrake(
                                drum.brakeFactor(),
                                drum.wheelCylinderArea(),
                                drum.drumRadius(),
                                drum.thresholdPressure()),
                        tyreRadius);
        };
    }

    /**
     * A disc at both wheels.
     *
     * @param law of one wheel
     * @param tyreRadius m
     */
    record Discs(DiscBrake law, double tyreRadius) implements AxleBrake {
        @Override
        public double force(double pressure) {
            return 2 * law.torque(pressure) / tyreRadius;
        }

        @Override
        public double thresholdPressure() {
            return law.thresholdPressure();
        }
    }

    /**
     * A drum at both wheels.
     *
     * @param law of one wheel
     * @param tyreRadius m
     */
    record Drums(DrumBrake law, double tyreRadius) implements AxleBrake {
        @Override
        public double force(double pressure) {
            return 2 * law.torque(pressure) / tyreRadius;
        }

        @Override
        public double thresholdPressure() {
            return law.thresholdPressure();
        }
    }
}
