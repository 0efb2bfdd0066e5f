package org.brakewright.model.resolved;

import java.util.List;

/**
 * What the car is put through, as legs of evenly changing speed.
 *
 * @param name the builder's name for it
 * @param path key path in the build file
 * @param inGear whether the engine holds back too
 * @param legs in order, without a gap
 */
public record ResolvedSchedule(String name, String path, boolean inGear, List<Leg> legs) {

    /** How long it takes, s. */
    public double duration() {
        return legs.stream().mapToDouble(Leg::duration).sum();
    }

    /**
     * A stretch of evenly changing speed.
     *
     * @param duration s
     * @param fromSpeed m/s
     * @param toSpeed m/s
     * @param fall of the road over the way along the map, above zero downhill
     */
    public record Leg(double duration, double fromSpeed, double toSpeed, double fall) {
        /** Rate at which the speed falls, m/s2. */
        public double deceleration() {
            return (fromSpeed - toSpeed) / duration;
        }

        /** Speed at a time since its start, m/s. */
        public double speed(double time) {
            return Math.max(0, fromSpeed - deceleration() * time);
        }
    }
}
