package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

import org.brakewright.model.Tag;

/** What is assumed of a clutch when the builder does not say, SI, each with range and basis. */
final class ClutchDefaults {
    static final Default FREE_PLAY = practice(5.0e-3, 1.0e-3, 11.0e-3, "factory figures go up to 11 mm at the pad");
    static final Default TRAVEL_TO_STOP = estimate(0.140, 0.110, 0.160, "clutch pedals of cars go 110 to 160 mm");
    static final Default PEDAL_EFFICIENCY = estimate(0.92, 0.85, 0.96, "friction of pivot, rod and the master's seals");
    static final Default RETURN_RATE = estimate(100, 0, 300, "a long soft spring");

    static final Default TUBE_LENGTH = estimate(1.2, 0.6, 2.5, "from firewall to bell housing");
    static final Default HOSE_LENGTH = estimate(0.4, 0.2, 1.0, "one hose to the engine");
    static final Default TRAPPED_VOLUME = estimate(15.0e-6, 8.0e-6, 30.0e-6, "fluid in slave and master");

    static final Default RELEASE_EFFICIENCY =
            estimate(0.90, 0.82, 0.95, "seals of the slave, fork pivot and guide of the bearing");
    static final Default FORK_SLAVE_STROKE = estimate(32.0e-3, 25.0e-3, 40.0e-3, "outside slaves move this far");
    static final Default CONCENTRIC_STROKE =
            practice(25.4e-3, 18.0e-3, 25.4e-3, "about 1 in of travel in all, some less");
    static final Default FORK_STIFFNESS = estimate(2.5e6, 1.0e6, 6.0e6, "a steel fork on a ball or a shaft");
    static final Default GAP = practice(3.2e-3, 2.5e-3, 3.8e-3, "0.100 to 0.150 in for bearings that stand off");

    static final Default FINGER_RATIO = estimate(3.8, 3.2, 4.6, "fingers of diaphragm covers");
    static final Default RELEASE_LOAD = estimate(1900, 1200, 2600, "covers of road cars and light V8s");
    static final Default RELEASE_TRAVEL =
            practice(10.0e-3, 8.0e-3, 13.0e-3, "about 10 mm is quoted, 12.7 mm for one medium truck");
    static final Default SPRING_MODULUS = estimate(206.0e9, 200.0e9, 210.0e9, "spring steel");
    static final Default FINGER_STIFFNESS = estimate(2.0e6, 1.0e6, 4.0e6, "fingers that give near a millimetre");

    static final Default FRICTION = estimate(0.28, 0.22, 0.35, "organic facings; metal ones hold more and grab");
    static final Default FACES = practice(2, 2, 2, "one plate between flywheel and cover");
    static final Default WEAR = estimate(1.5e-3, 1.0e-3, 2.2e-3, "both facings down to their rivets");
    static final Default CUSHION_TRAVEL = estimate(0.8e-3, 0.5e-3, 1.1e-3, "waved springs between the facings");
    static final Default CLEARANCE = estimate(0.6e-3, 0.4e-3, 1.0e-3, "a plate that runs a little out of true");

    static final Default TORQUE_RESERVE =
            estimate(1.3, 1.2, 1.5, "facings vary, and starting off asks for more than the engine's own torque");
    static final Default MOST_EFFORT =
            new Default(130, 100, 170, "surveys of passenger cars call 100 N light and 130 N hard", Tag.SECONDARY);

    private ClutchDefaults() {}

    /** How far a bearing is pressed together at rest, by the whole way that its slave has (m at the bearing). */
    static Default preload(double way) {
        return practice(0.6 * way, 0.5 * way, 0.7 * way, "0.5 to 0.7 of the whole way; the rest is for wear");
    }

    /** Force at the bearing, by clamp load (N) and finger ratio. */
    static Default releaseLoad(double clampLoad, double fingerRatio) {
        double load = clampLoad / fingerRatio;
        return estimate(load, 0.85 * load, 1.15 * load, "the clamp load over the finger ratio");
    }

    /** Most bearing travel, by the travel that frees the clutch (m). */
    static Default mostBearingTravel(double needed) {
        return estimate(needed + 3.0e-3, needed + 2.0e-3, needed + 5.0e-3, "2 to 5 mm beyond the travel that frees it");
    }
}
