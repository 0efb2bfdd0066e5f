package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.footwell.Person;
import org.brakewright.model.footwell.Shoe;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedMount.Place;

/**
 * The pedals side by side, in SI. Places are x forward, y left, z up from the zero of the lines.
 *
 * @param clutch empty on a car of two pedals
 * @param arm thickness of each pedal's arm, m
 * @param leftWall left of the zero, m; empty when not told
 * @param rightWall left of the zero, m; empty when not told
 * @param obstacles that pedals must not touch, those of the lines too
 * @param heelAndToe whether one foot is to work brake and throttle
 */
public record ResolvedFootwell(
        FootPad brake,
        Optional<FootPad> clutch,
        FootPad throttle,
        double arm,
        OptionalDouble leftWall,
        OptionalDouble rightWall,
        List<Obstacle> obstacles,
        Person driver,
        Shoe shoe,
        boolean heelAndToe) {
    public ResolvedFootwell {
        obstacles = List.copyOf(obstacles);
    }

    /** The foot in its shoe, m. */
    public double shoeBreadth() {
        return driver.footBreadth() + shoe.adds();
    }

    /**
     * A pedal.
     *
     * @param breadth of the pad, m
     * @param height of the pad, m
     * @param pad its middle at rest
     * @param travel of the pad, m
     */
    public record FootPad(double breadth, double height, Place pivot, Place pad, double travel) {}
}
