package org.brakewright.analysis.resolve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Stance;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.vehicle.AxleEnd;

/** Parts that a car does not have, as assumed for comparing it with other layouts. */
public final class UsualParts {
    /** Slope of a common proportioning valve; common practice, no source. */
    private static final double VALVE_SLOPE = 0.3;

    private UsualParts() {}

    /** A centred balance bar. */
    public static Bar bar() {
        double spacing = Defaults.CLEVIS_SPACING.value();
        return new Bar(
                spacing,
                0,
                Defaults.BAR_MOVEMENT_PER_TURN.value(),
                Defaults.offsetLimit(spacing).value(),
                Defaults.BAR_TILT_LIMIT.value(),
                Stance.square(spacing),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** A single master made from another, with the usual stroke. */
    public static Master single(Master other) {
        return new Master(
                other.bore(),
                other.area(),
                Defaults.MASTER_STROKE.value(),
                Defaults.MASTER_LOST_STROKE.value(),
                other.springForce(),
                other.springRate(),
                other.sealFriction(),
                other.ratedPressure());
    }

    /** A tandem master made from a single one, with the usual strokes. */
    public static Master tandem(Master other) {
        return new Master(
                other.bore(),
                other.area(),
                2 * chamberStroke(),
                Defaults.TANDEM_LOST_STROKE.value(),
                other.springForce(),
                other.springRate(),
                other.sealFriction(),
                other.ratedPressure());
    }

    /** Stroke of a chamber of a tandem master, m. */
    public static double chamberStroke() {
        return Defaults.CHAMBER_STROKE.value();
    }

    /** An adjustable valve with a knee in Pa. */
    public static Valve valve(double knee) {
        return new Valve(knee, VALVE_SLOPE, AxleEnd.REAR, true);
    }
}
