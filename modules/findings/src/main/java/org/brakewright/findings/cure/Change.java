package org.brakewright.findings.cure;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * One thing a builder could change.
 *
 * @param kind what is done
 * @param values new SI values by key path, kept sorted so that the same input gives the same bytes
 * @param amount how much, in the kind's own measure: turns, steps, ratio; plus and minus as the kind says
 */
public record Change(Kind kind, Map<String, Double> values, double amount) {

    public Change {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /** What is done, least work first. */
    public enum Kind {
        /** Turns of the bar's adjuster, plus toward more front. */
        TURN_BAR,
        /** Turn of the valve's knee, Pa. */
        SET_KNEE,
        /** Steps of the front master's bore in stock sizes. */
        FRONT_BORE,
        /** Steps of the rear master's bore in stock sizes. */
        REAR_BORE,
        /** Steps of the tandem master's bore in stock sizes. */
        TANDEM_BORE,
        /** Steps of the front wheel cylinders' bore in stock sizes. */
        FRONT_WHEEL_CYLINDER,
        /** Steps of the rear wheel cylinders' bore in stock sizes. */
        REAR_WHEEL_CYLINDER,
        /** Change of the pedal ratio. */
        PEDAL_RATIO,
        /** A proportioning valve is fitted in the rear line. */
        FIT_VALVE,
        /** The clutch pedal's stop is set, m of pad travel. */
        CLUTCH_STOP,
        /** Steps of the clutch master's bore in stock sizes. */
        CLUTCH_BORE,
        /** Change of the clutch pedal's ratio. */
        CLUTCH_RATIO;

        /** Whether it touches nothing but the clutch. */
        public boolean ofClutch() {
            return switch (this) {
                case CLUTCH_STOP, CLUTCH_BORE, CLUTCH_RATIO -> true;
                case TURN_BAR,
                        SET_KNEE,
                        FRONT_BORE,
                        REAR_BORE,
                        TANDEM_BORE,
                        FRONT_WHEEL_CYLINDER,
                        REAR_WHEEL_CYLINDER,
                        PEDAL_RATIO,
                        FIT_VALVE -> false;
            };
        }
    }
}
