package org.brakewright.analysis.setting;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.setting.Setting.Kind;
import org.brakewright.analysis.setting.Setting.Use;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoints;
import org.brakewright.kernel.roots.Peak;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Twin;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Searches the setting of bar or valve whose least margin over all cases is greatest. */
public final class Settings {
    /** Least knee that is looked at, Pa. */
    static final double LEAST_KNEE = 1e5;

    /** Greatest knee that is looked at, Pa: no road car presses harder on a dry road. */
    static final double MOST_KNEE = 120e5;

    private static final int POINTS = 13;
    private static final double NARROW = 1e-4;

    /** For the bar under one of many knees. */
    private static final int FEW_POINTS = 5;

    private static final double LESS_NARROW = 0.03;

    /** The least part of a turn that the adjuster is set to; common practice, no source. */
    private static final double STEP = 0.25;

    private final ResolvedBuild build;
    private final Margins margins;

    Settings(ResolvedBuild build) {
        this.build = build;
        this.margins = new Margins(build);
    }

    /** The best setting of a build; null when it has neither a bar nor an adjustable valve. With both, the bar is set. */
    public static @Nullable Setting of(ResolvedBuild build) {
        Settings settings = new Settings(build);
        if (build.apply() instanceof Twin twin) {
            return settings.bar(twin);
        }
        Optional<Valve> valve = build.apply().valve().filter(Settings::settable);
        return valve.isPresent() ? settings.valve(build.apply(), valve.get()) : null;
    }

    /** A valve in the front line is a fault of its own, which no knee puts right. */
    private static boolean settable(Valve valve) {
        return valve.adjustable() && valve.line() == AxleEnd.REAR;
    }

    private Setting bar(Twin twin) {
        Bar bar = twin.bar();
        double limit = limit(bar);
        double turns = bestTurns(twin);
        double best = bar.offset() + turns * bar.movementPerTurn();
        return new Setting(
                Kind.BAR,
                bar.offset(),
                best,
                turns,
                limit - best,
                limit + best,
                margins.of(twin),
                margins.of(twin.withOffset(best)),
                use(twin),
                use(twin.withOffset(best)));
    }

    private Setting valve(ResolvedApply apply, Valve valve) {
        double best = bestKnee(apply, valve);
        ResolvedApply set = apply.withValve(Optional.of(valve.withKnee(best)));
        return new Setting(
                Kind.VALVE,
                valve.knee(),
                best,
                null,
                null,
                null,
                margins.of(apply),
                margins.of(set),
                use(apply),
                use(set));
    }

    /** Largest offset either way: the adjuster's, or where the bar already is. */
    static double limit(Bar bar) {
        return Math.max(bar.offsetLimit(), Math.abs(bar.offset()));
    }

    /** Offset with the largest margin, m. */
    double bestOffset(Twin twin) {
        double limit = limit(twin.bar());
        return peak(twin::withOffset, -limit, limit);
    }

    /** Turns from where the bar stands to the best offset, in steps that a person can count, within the bar's range. */
    private double bestTurns(Twin twin) {
        Bar bar = twin.bar();
        double exact = (bestOffset(twin) - bar.offset()) / bar.movementPerTurn() / STEP;
        double nearest = STEP * Math.rint(exact);
        return DoubleStream.of(STEP * Math.floor(exact), STEP * Math.ceil(exact))
                .filter(turns -> Math.abs(bar.offset() + turns * bar.movementPerTurn()) <= limit(bar))
                .boxed()
                .max(Comparator.comparingDouble(
                        turns -> margins.of(twin.withOffset(bar.offset() + turns * bar.movementPerTurn()))
                                .margin()))
                .orElse(nearest);
    }

    /** Largest margin of any offset, but for some hundredths. */
    double nearBestMargin(Twin twin) {
        double limit = limit(twin.bar());
        DoubleUnaryOperator margin =
                offset -> margins.of(twin.withOffset(offset)).margin();
        return margin.applyAsDouble(Peak.between(margin, -limit, limit, FEW_POINTS, LESS_NARROW));
    }

    /** Knee with the largest margin, Pa; of equal ones the highest, which interferes least. */
    double bestKnee(ResolvedApply apply, Valve valve) {
        return -peak(knee -> apply.withValve(Optional.of(valve.withKnee(-knee))), -MOST_KNEE, -LEAST_KNEE);
    }

    private double peak(DoubleFunction<ResolvedApply> set, double low, double high) {
        return Peak.between(value -> margins.of(set.apply(value)).margin(), low, high, POINTS, NARROW);
    }

    SettingMargin margin(ResolvedApply apply) {
        return margins.of(apply);
    }

    /** What the hard stop of the heaviest load case asks with an apply system; null when no push gives it. */
    @Nullable
    Use use(ResolvedApply apply) {
        ResolvedBuild set = build.withApply(apply);
        OperatingPoints points = new OperatingPoints(set, ChainCurve.of(Chain.of(set)));
        return points.atDeceleration(
                        set.aims().hardStopG(), Loads.of(set.car(), set.car().heaviest()))
                .map(point -> new Use(point.pedalForceN(), point.pedalTravelM(), point.withinTravel()))
                .orElse(null);
    }
}
