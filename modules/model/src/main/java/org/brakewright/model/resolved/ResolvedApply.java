package org.brakewright.model.resolved;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.hydraulics.Chamber;

/** Apply system in SI. */
public sealed interface ResolvedApply {

    /** Proportioning valve in the rear line, when there is one. */
    Optional<Valve> valve();

    /**
     * Two masters and a balance bar.
     *
     * @param front master of the front circuit
     * @param rear master of the rear circuit
     * @param bar the balance bar
     * @param valve in the rear line
     */
    record Twin(Master front, Master rear, Bar bar, Optional<Valve> valve) implements ResolvedApply {}

    /**
     * Tandem master with optional booster.
     *
     * @param master bore, lost stroke and spring of both chambers; its stroke is the sum of both chambers'
     * @param frontFedBy chamber that feeds the front
     * @param primaryStroke m
     * @param secondaryStroke m
     * @param booster when there is one
     * @param valve in the rear line
     */
    record Tandem(
            Master master,
            Chamber frontFedBy,
            double primaryStroke,
            double secondaryStroke,
            Optional<Boost> booster,
            Optional<Valve> valve)
            implements ResolvedApply {}

    /**
     * A master cylinder.
     *
     * @param bore diameter, m
     * @param area m2
     * @param stroke m
     * @param lostStroke until the port closes, m
     * @param springForce N
     * @param ratedPressure Pa; empty when not known
     */
    record Master(
            double bore,
            double area,
            double stroke,
            double lostStroke,
            double springForce,
            OptionalDouble ratedPressure) {}

    /**
     * A balance bar.
     *
     * @param clevisSpacing m
     * @param offset of the bearing toward the front clevis, m
     * @param movementPerTurn of the adjuster, m
     * @param offsetLimit largest offset either way, m
     * @param tiltLimit largest tilt from square, rad
     * @param lockedForRoad whether the adjuster is disabled and labelled; empty when not said
     */
    record Bar(
            double clevisSpacing,
            double offset,
            double movementPerTurn,
            double offsetLimit,
            double tiltLimit,
            Optional<Boolean> lockedForRoad) {}

    /**
     * A vacuum booster.
     *
     * @param ratio output over input force below run-out
     * @param diaphragmArea m2
     * @param vacuum Pa below atmosphere
     * @param crackInForce N
     * @param efficiency of the diaphragm's force
     */
    record Boost(double ratio, double diaphragmArea, double vacuum, double crackInForce, double efficiency) {}

    /**
     * A proportioning valve.
     *
     * @param knee Pa
     * @param slope above the knee
     * @param adjustable whether the knee can be set
     */
    record Valve(double knee, double slope, boolean adjustable) {}
}
