package org.brakewright.analysis.feel;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakewright.analysis.tolerance.Input;

/** The uncertain values that give travel, and which way. Lengths of hoses and tubes are left as they stand. */
final class TravelInputs {
    /** A larger value gives more travel. */
    private static final Set<String> GIVES = Set.of(
            "free_play",
            "slack",
            "lost_stroke",
            "running_clearance",
            "knock_back",
            "shoe_movement",
            "caliper_spread",
            "pad_compression",
            "pad_settling",
            "shoe_compression",
            "hose_expansion",
            "free_air",
            "trapped_volume");

    /** A larger value gives less travel. */
    private static final Set<String> HOLDS = Set.of("tube_modulus", "bulk_modulus", "mount_stiffness", "arm_stiffness");

    private TravelInputs() {}

    /** Values (SI, by path) with which the pedal travels least. */
    static Map<String, Double> firm(List<Input> inputs) {
        return ends(inputs, HOLDS);
    }

    /** Values (SI, by path) with which the pedal travels most. */
    static Map<String, Double> soft(List<Input> inputs) {
        return ends(inputs, GIVES);
    }

    private static Map<String, Double> ends(List<Input> inputs, Set<String> high) {
        Map<String, Double> ends = new HashMap<>();
        for (Input input : inputs) {
            String key = input.path().substring(input.path().lastIndexOf('.') + 1);
            if (GIVES.contains(key) || HOLDS.contains(key)) {
                ends.put(input.path(), high.contains(key) ? input.high() : input.low());
            }
        }
        return ends;
    }
}
