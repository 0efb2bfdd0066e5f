package org.brakewright.analysis.resolve;

import org.brakewright.model.Given;
import org.jspecify.annotations.Nullable;

/** Completes the cross-section of a tube, of a brake circuit or of the clutch. */
final class ResolveTube {
    private final Values values;

    ResolveTube(Values values) {
        this.values = values;
    }

    /**
     * A cross-section with a bore.
     *
     * @param outside diameter, m
     * @param wall m
     */
    record Section(double outside, double wall) {}

    /** The section of the tube at a path. */
    Section section(String path, @Nullable Given outsideDiameter, @Nullable Given tubeWall) {
        double outside = values.take(outsideDiameter, path + ".tube_outside_diameter", Defaults.TUBE_OUTSIDE);
        double wall = values.take(tubeWall, path + ".tube_wall", Defaults.TUBE_WALL);
        if (2 * wall < outside) {
            return new Section(outside, wall);
        }
        values.problem(
                path + ".tube_wall",
                Values.written(tubeWall),
                "The tube's wall leaves no bore.",
                "less than half the outside diameter");
        return new Section(outside, outside / 4);
    }
}
