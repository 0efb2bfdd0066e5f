package org.brakewright.model.resolved;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.hydraulics.Chamber;
import org.brakewright.model.hydraulics.CircuitSplit;
import org.brakewright.model.vehicle.AxleEnd;

/** Apply system in SI. */
public sealed interface ResolvedApply {

    /** Valves between master and wheels. */
    Valves valves();

    /** The proportioning valve, when there is one. */
    default Optional<Valve> valve() {
        return valves().proportioning();
    }

    /** Whether each circuit feeds one front wheel and the rear wheel across. */
    boolean diagonal();

    /** The same with another proportioning valve, or with none at all. */
    ResolvedApply withValve(Optional<Valve> other);

    /**
     * Two masters and a balance bar.
     *
     * @param front master of the front circuit
     * @param rear master of the rear circuit
     * @param bar the balance bar
     * @param valves between masters and wheels
     */
    record Twin(Master front, Master rear, Bar bar, Valves valves) implements ResolvedApply {
        /** The same masters with the bar's bearing elsewhere, m toward the front clevis. */
        public Twin withOffset(double offset) {
            return new Twin(front, rear, bar.withOffset(offset), valves);
        }

        @Override
        public boolean diagonal() {
            return false;
        }

        @Override
        public Twin withValve(Optional<Valve> other) {
            return new Twin(front, rear, bar, valves.with(other));
        }
    }

    /**
     * Tandem master with optional booster.
     *
     * @param master bore, lost stroke and spring of both chambers; its stroke is the sum of both chambers'
     * @param split which wheels a chamber feeds
     * @param frontFedBy chamber that feeds the front; with a diagonal split the chamber that feeds the left front wheel
     * @param primaryStroke m
     * @param secondaryStroke m
     * @param booster when there is one
     * @param valves between master and wheels
     */
    record Tandem(
            Master master,
            CircuitSplit split,
            Chamber frontFedBy,
            double primaryStroke,
            double secondaryStroke,
            Optional<Boost> booster,
            Valves valves)
            implements ResolvedApply {
        @Override
        public boolean diagonal() {
            return split == CircuitSplit.DIAGONAL;
        }

        @Override
        public Tandem withValve(Optional<Valve> other) {
            return new Tandem(master, split, frontFedBy, primaryStroke, secondaryStroke, booster, valves.with(other));
        }
    }

    /**
     * A master cylinder.
     *
     * @param bore diameter, m
     * @param area m2
     * @param stroke m
     * @param lostStroke until the port closes, m
     * @param springForce at rest, N
     * @param springRate rise of the spring's force with the stroke, N/m
     * @param sealFriction on top of the pedal's efficiency, N
     * @param ratedPressure Pa; empty when not known
     */
    record Master(
            double bore,
            double area,
            double stroke,
            double lostStroke,
            double springForce,
            double springRate,
            double sealFriction,
            OptionalDouble ratedPressure) {
        /** The same master with another bore in m. */
        public Master withBore(double other) {
            double otherArea = Math.PI / 4 * other * other;
            return new Master(
                    other, otherArea, stroke, lostStroke, springForce, springRate, sealFriction, ratedPressure);
        }
    }

    /**
     * A balance bar.
     *
     * @param clevisSpacing m
     * @param offset of the bearing toward the front clevis, m
     * @param movementPerTurn of the adjuster, m
     * @param offsetLimit largest offset either way, m
     * @param tiltLimit largest tilt from square, rad
     * @param stance how bar, clevises and rods stand
     * @param sideFloat end float between the clevises, m; empty when not measured
     * @param lockedForRoad whether the adjuster is disabled and labelled; empty when not said
     */
    record Bar(
            double clevisSpacing,
            double offset,
            double movementPerTurn,
            double offsetLimit,
            double tiltLimit,
            Stance stance,
            OptionalDouble sideFloat,
            Optional<Boolean> lockedForRoad) {

        /** Lean (rad) of both rods with the bar square, plus when their far ends lie closer together than the clevises. */
        public double rodLean() {
            return Math.atan((clevisSpacing - stance.masterSpacing()) / 2 / stance.rodLength());
        }

        /** The same bar with its bearing elsewhere, m toward the front clevis. */
        public Bar withOffset(double other) {
            return new Bar(
                    clevisSpacing, other, movementPerTurn, offsetLimit, tiltLimit, stance, sideFloat, lockedForRoad);
        }
    }

    /**
     * How a balance bar, its clevises and its rods stand.
     *
     * @param pinSetBack of the clevis pins behind the line through the bearing's centre, m
     * @param restLead of the front clevis ahead of the rear one at rest, m
     * @param rodLength clevis pin to rod end, m
     * @param masterSpacing between the masters' axes, m
     */
    record Stance(double pinSetBack, double restLead, double rodLength, double masterSpacing) {
        /** Parallel rods, pins in line, bar square at rest. */
        public static Stance square(double clevisSpacing) {
            return new Stance(0, 0, clevisSpacing, clevisSpacing);
        }
    }

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
     * Valves between master and wheels.
     *
     * @param proportioning the proportioning valve
     * @param second a second one, behind the first when both sit in the same line
     * @param metering in the front line
     */
    record Valves(Optional<Valve> proportioning, Optional<Valve> second, Optional<Metering> metering) {
        /** No valve at all. */
        public static Valves none() {
            return new Valves(Optional.empty(), Optional.empty(), Optional.empty());
        }

        /** The same with another first proportioning valve; without one the second goes too. */
        Valves with(Optional<Valve> other) {
            return new Valves(other, other.isPresent() ? second : Optional.empty(), metering);
        }
    }

    /**
     * A metering valve.
     *
     * @param opening Pa up to which nothing passes
     * @param blend Pa from which everything passes
     */
    record Metering(double opening, double blend) {}

    /**
     * A proportioning valve.
     *
     * @param knee Pa
     * @param slope above the knee
     * @param line it sits in
     * @param adjustable whether the knee can be set
     */
    record Valve(double knee, double slope, AxleEnd line, boolean adjustable) {
        /** The same valve with another knee, Pa. */
        public Valve withKnee(double other) {
            return new Valve(other, slope, line, adjustable);
        }
    }
}
