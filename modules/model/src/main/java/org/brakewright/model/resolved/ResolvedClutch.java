package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.clutch.Action;
import org.brakewright.model.resolved.ResolvedApply.Master;

/**
 * The clutch and its release in SI.
 *
 * @param pedal the clutch pedal
 * @param pedalSpring beside the master's; empty without one
 * @param master the clutch master
 * @param line to the slave, with its fluid
 * @param slave what moves the bearing
 * @param rest how the bearing stands at rest
 * @param cover the cover
 * @param plate the plate
 * @param limits what it is held against
 */
public record ResolvedClutch(
        ResolvedPedal pedal,
        Optional<PedalSpring> pedalSpring,
        Master master,
        ResolvedCircuit line,
        Slave slave,
        Rest rest,
        Cover cover,
        Plate plate,
        Limits limits) {

    /** A spring at the pedal. */
    public sealed interface PedalSpring permits PedalSpring.Return, PedalSpring.OverCentre {
        /**
         * Pulls the pedal back.
         *
         * @param force at the pad, pedal up, N
         * @param rate rise over pad travel, N/m
         */
        record Return(double force, double rate) implements PedalSpring {}

        /**
         * Holds back before its dead centre and helps beyond.
         *
         * @param action pulls or pushes
         * @param rate N/m
         * @param freeLength m
         * @param pinRadius m
         * @param anchorRadius m
         * @param deadCentre pad travel there, m
         * @param padArm m
         */
        record OverCentre(
                Action action,
                double rate,
                double freeLength,
                double pinRadius,
                double anchorRadius,
                double deadCentre,
                double padArm)
                implements PedalSpring {}
    }

    /**
     * What moves the release bearing.
     *
     * @param concentric whether it is a ring round the input shaft
     * @param area m2
     * @param stroke m
     * @param forkRatio slave travel over bearing travel, 1 when concentric
     * @param efficiency from slave to bearing
     * @param forkGive of fork and pivot at the bearing, m/N
     */
    public record Slave(
            boolean concentric, double area, double stroke, double forkRatio, double efficiency, double forkGive) {}

    /**
     * How the bearing stands at rest with a new plate; all at the bearing.
     *
     * @param contact whether it rests on the fingers
     * @param gap to the fingers, 0 in contact, m
     * @param ahead how far it can go until the slave is at its end, m
     * @param behind how far wear may push the fingers back until the slave is home or the gap is gone, m
     */
    public record Rest(boolean contact, double gap, double ahead, double behind) {}

    /**
     * The cover.
     *
     * @param spring what is known of its spring
     * @param clampLoad as the part sheet says, N; empty when not given
     * @param releaseTravel that frees it, as given or assumed, m; empty when it follows from the spring
     * @param mostBearingTravel m
     */
    public record Cover(
            Spring spring, OptionalDouble clampLoad, OptionalDouble releaseTravel, double mostBearingTravel) {}

    /** What is known of the cover's spring. */
    public sealed interface Spring {
        /**
         * Its force at the bearing over the bearing's travel.
         *
         * @param points travel rising
         * @param fingerRatio finger travel over lift of the plate
         */
        record Points(List<Point> points, double fingerRatio) implements Spring {
            public Points {
                points = List.copyOf(points);
            }
        }

        /**
         * A point.
         *
         * @param travel m
         * @param force N
         */
        record Point(double travel, double force) {}

        /**
         * One force only.
         *
         * @param releaseLoad at the bearing, N
         * @param fingerRatio finger travel over lift of the plate
         */
        record Load(double releaseLoad, double fingerRatio) implements Spring {}

        /**
         * Its measures, all radii in m.
         *
         * @param rim the closed rim
         * @param pressRadius of the contact on the plate
         * @param fulcrumRadius of the ring it turns about
         * @param bearingRadius of the bearing on the fingers
         * @param engagedDeflection at the plate, new plate, m
         * @param cushionTravel of the plate between its facings, m
         * @param fingerStiffness of all fingers together, N/m
         */
        record Dimensions(
                Rim rim,
                double pressRadius,
                double fulcrumRadius,
                double bearingRadius,
                double engagedDeflection,
                double cushionTravel,
                double fingerStiffness)
                implements Spring {}

        /**
         * The closed rim of a diaphragm spring.
         *
         * @param outerRadius m
         * @param innerRadius m
         * @param thickness m
         * @param coneHeight m
         * @param modulus Pa
         */
        record Rim(double outerRadius, double innerRadius, double thickness, double coneHeight, double modulus) {}
    }

    /**
     * The plate.
     *
     * @param outerRadius of the facings, m
     * @param innerRadius m
     * @param friction of the facings
     * @param faces that rub
     * @param wear allowed, both faces together, m
     * @param clearance for shifting, m
     */
    public record Plate(
            double outerRadius, double innerRadius, double friction, int faces, double wear, double clearance) {}

    /**
     * What it is held against.
     *
     * @param engineTorque N m; empty when not given
     * @param torqueReserve torque carried over engine torque, at least
     * @param mostEffort N
     */
    public record Limits(OptionalDouble engineTorque, double torqueReserve, double mostEffort) {}
}
