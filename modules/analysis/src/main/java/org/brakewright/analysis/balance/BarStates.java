package org.brakewright.analysis.balance;

import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.jspecify.annotations.Nullable;

/** Works out how the balance bar is set and what is left of its range. */
public final class BarStates {
    private BarStates() {}

    /** The bar's state; null with a tandem master. */
    public static @Nullable BarState of(ResolvedApply apply, @Nullable HardStop hardStop) {
        return apply instanceof ResolvedApply.Twin twin ? of(twin.bar(), hardStop) : null;
    }

    private static BarState of(Bar bar, @Nullable HardStop hardStop) {
        double spacing = bar.clevisSpacing();
        double limit = Math.max(bar.offsetLimit(), Math.abs(bar.offset()));
        BalanceBar set = new BalanceBar(spacing, bar.offset());
        return new BarState(
                set.frontShare(),
                bar.offset(),
                (limit - bar.offset()) / bar.movementPerTurn(),
                (limit + bar.offset()) / bar.movementPerTurn(),
                new BalanceBar(spacing, limit).frontShare(),
                new BalanceBar(spacing, -limit).frontShare(),
                bar.movementPerTurn() / spacing,
                hardStop == null ? 0 : tilt(bar, hardStop.point()),
                bar.tiltLimit());
    }

    /** Tilt (rad) of a bar that rests square, with the masters where they are at a point; plus when the front rod is ahead. */
    public static double tilt(Bar bar, OperatingPoint point) {
        return new BalanceBar(bar.clevisSpacing(), bar.offset()).tilt(point.frontStrokeM(), point.rearStrokeM());
    }
}
