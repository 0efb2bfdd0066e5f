package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.model.hydraulics.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Stance;
import org.jspecify.annotations.Nullable;

/** Completes the balance bar. */
final class ResolveBar {
    private static final BalanceBar UNKNOWN =
            new BalanceBar(null, null, null, null, null, null, null, null, null, null, null);

    private final Values values;

    ResolveBar(Values values) {
        this.values = values;
    }

    Bar bar(@Nullable BalanceBar given) {
        BalanceBar bar = given == null ? UNKNOWN : given;
        String path = "apply.balance_bar";
        double spacing = values.take(bar.clevisSpacing(), path + ".clevis_spacing", Defaults.CLEVIS_SPACING);
        double offset = values.take(bar.offset(), path + ".offset", Defaults.BAR_OFFSET);
        double limit = values.take(bar.offsetLimit(), path + ".offset_limit", Defaults.offsetLimit(spacing));
        checkOffset(bar, path, spacing, offset, limit);
        return new Bar(
                spacing,
                offset,
                values.take(bar.movementPerTurn(), path + ".movement_per_turn", Defaults.BAR_MOVEMENT_PER_TURN),
                limit,
                values.take(bar.tiltLimit(), path + ".tilt_limit", Defaults.BAR_TILT_LIMIT),
                stance(bar, path, spacing),
                values.maybe(bar.sideFloat()),
                Optional.ofNullable(bar.lockedForRoad()));
    }

    private Stance stance(BalanceBar bar, String path, double spacing) {
        double rod = values.take(bar.rodLength(), path + ".rod_length", Defaults.ROD_LENGTH);
        double masters = values.take(bar.masterSpacing(), path + ".master_spacing", Defaults.masterSpacing(spacing));
        if (Math.abs(masters - spacing) / 2 >= 0.5 * rod) {
            values.problem(
                    path + ".master_spacing",
                    Values.written(bar.masterSpacing()),
                    "The rods would lean by more than 26 degrees, which no piston stands.",
                    "closer to the clevis spacing, " + Values.written(bar.clevisSpacing()));
        }
        return new Stance(
                values.take(bar.pinSetBack(), path + ".pin_set_back", Defaults.PIN_SET_BACK),
                values.take(bar.restLead(), path + ".rest_lead", Defaults.REST_LEAD),
                rod,
                masters);
    }

    private void checkOffset(BalanceBar bar, String path, double spacing, double offset, double limit) {
        if (limit >= spacing / 2) {
            values.problem(
                    path + ".offset_limit",
                    Values.written(bar.offsetLimit()),
                    "The bearing cannot move past a clevis.",
                    "less than half the clevis spacing, " + Values.written(bar.clevisSpacing()));
        }
        if (Math.abs(offset) >= spacing / 2) {
            values.problem(
                    path + ".offset",
                    Values.written(bar.offset()),
                    "The bearing lies at or past a clevis, so one master would be pulled.",
                    "less than half the clevis spacing either way, spacing " + Values.written(bar.clevisSpacing()));
        } else if (bar.offsetLimit() != null && Math.abs(offset) > limit * (1 + 1e-9)) {
            values.problem(
                    path + ".offset",
                    Values.written(bar.offset()),
                    "The bearing lies beyond the adjuster's own limit.",
                    "at most offset_limit either way, " + Values.written(bar.offsetLimit()));
        }
    }
}
