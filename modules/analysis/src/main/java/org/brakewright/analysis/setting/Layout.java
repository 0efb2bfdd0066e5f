package org.brakewright.analysis.setting;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The same car with one layout at its own best setting.
 *
 * @param kind which layout
 * @param present whether the car is built so
 * @param offsetM offset of the bar; null without one
 * @param kneePa knee of the valve; null without one
 * @param frontBoreM master bore of the front circuit
 * @param rearBoreM master bore of the rear circuit; the same with a tandem master
 * @param margin over all cases
 * @param efficiency deceleration at the first lock over the greatest, least over the load cases, at grips of 0.3, 0.6 and the car's own; fewer when no push locks a wheel
 * @param use effort and travel at the hard stop; null when no push gives it
 * @param frontFailedG deceleration with the front circuit failed, g
 * @param rearFailedG deceleration with the rear circuit failed, g
 * @param assumed what was assumed to build it on paper
 */
public record Layout(
        Kind kind,
        boolean present,
        @Nullable Double offsetM,
        @Nullable Double kneePa,
        double frontBoreM,
        double rearBoreM,
        SettingMargin margin,
        List<Used> efficiency,
        Setting.@Nullable Use use,
        double frontFailedG,
        double rearFailedG,
        List<Assumed> assumed) {

    /** Layouts that are compared. */
    public enum Kind {
        BAR,
        TANDEM_AND_VALVE,
        BAR_AND_VALVE,
        TANDEM
    }

    /** What the car does not have and the comparison needs. */
    public enum Assumed {
        /** Bore with the present effort at the hard stop, before any valve is set. */
        BORE_FOR_SAME_EFFORT,
        /** Strokes of a usual tandem master. */
        TANDEM_STROKES,
        /** Strokes of usual single masters. */
        SINGLE_STROKES,
        /** A usual bar. */
        USUAL_BAR,
        /** A valve of slope 0.3. */
        USUAL_VALVE
    }

    /**
     * How well a grip is used.
     *
     * @param grip of the road
     * @param efficiency deceleration at the first lock over the greatest
     */
    public record Used(double grip, double efficiency) {}
}
