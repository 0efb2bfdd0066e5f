package org.brakewright.analysis.balance;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.hydraulics.FailedTwinChain;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Works out how the balance bar is set, how it stands and what is left of its range. */
public final class BarStates {
    private final ResolvedBuild build;
    private final Chain chain;
    private final @Nullable Pushed hardStop;

    private BarStates(ResolvedBuild build, Chain chain, @Nullable Pushed hardStop) {
        this.build = build;
        this.chain = chain;
        this.hardStop = hardStop;
    }

    /**
     * The bar's state; null with a tandem master.
     *
     * @param hardStop the car there; null when no push gives it
     * @param explained whether the effect of a rod's length is wanted
     */
    public static @Nullable BarState of(
            ResolvedBuild build, Chain chain, @Nullable Pushed hardStop, boolean explained) {
        return build.apply() instanceof ResolvedApply.Twin twin
                ? new BarStates(build, chain, hardStop).state(twin, explained)
                : null;
    }

    private BarState state(ResolvedApply.Twin twin, boolean explained) {
        Bar bar = twin.bar();
        double spacing = bar.clevisSpacing();
        double limit = Math.max(bar.offsetLimit(), Math.abs(bar.offset()));
        BarPose atRest = atRest(bar);
        BarPose working = hardStop == null ? null : BarPose.of(hardStop);
        return new BarState(
                new BalanceBar(spacing, bar.offset()).frontShare(),
                bar.offset(),
                (limit - bar.offset()) / bar.movementPerTurn(),
                (limit + bar.offset()) / bar.movementPerTurn(),
                new BalanceBar(spacing, limit).frontShare(),
                new BalanceBar(spacing, -limit).frontShare(),
                bar.movementPerTurn() / spacing,
                working == null ? atRest.tiltRad() : working.tiltRad(),
                bar.tiltLimit(),
                bar.sideFloat().isPresent() ? bar.sideFloat().getAsDouble() : null,
                atRest,
                working,
                failed(AxleEnd.FRONT),
                failed(AxleEnd.REAR),
                explained && hardStop != null ? new RodLengthEffects(build, twin, hardStop).effect() : null);
    }

    /** Both pistons home: what preload and valves do to the share is not asked at no push. */
    private BarPose atRest(Bar bar) {
        double tilt = Math.atan(bar.stance().restLead() / bar.clevisSpacing());
        return new BarPose(0, 0, 0, tilt, chain.apply().at(0).bar().frontShare());
    }

    private @Nullable FailedPose failed(AxleEnd open) {
        if (hardStop == null) {
            return null;
        }
        Chain failed = chain.failed(open);
        Pushed pushed = failed.atPedalForce(hardStop.state().pedalForce());
        double live = open == AxleEnd.FRONT ? pushed.rearStroke() : pushed.frontStroke();
        return failed.apply() instanceof FailedTwinChain bar
                ? new FailedPose(
                        BarPose.of(pushed),
                        bar.fallen(live).stop(),
                        pushed.padTravel(),
                        pushed.padTravel() > build.pedal().travelToStop())
                : null;
    }
}
