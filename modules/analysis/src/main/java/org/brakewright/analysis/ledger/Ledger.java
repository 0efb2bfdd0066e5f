package org.brakewright.analysis.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.model.Build;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedHeat;
import org.jspecify.annotations.Nullable;

/** Moves every assumption across its range, one at a time, and ranks them: what to measure next. */
public final class Ledger {
    private static final double CROSSED = 1;

    /** Least wet boiling point of any grade, DOT 3 in 49 CFR 571.116 S5.1.2, K. */
    private static final double LEAST_WET_BOILING = 413.15;

    private Ledger() {}

    /**
     * The ledger, heaviest first.
     *
     * @param build as written
     * @param resolved the same, resolved
     * @param assumptions of that resolution
     * @param nominal headline of the build as it stands
     */
    public static List<LedgerEntry> weigh(
            Build build, ResolvedBuild resolved, List<Assumption> assumptions, Headline nominal) {
        List<LedgerEntry> entries = new ArrayList<>();
        for (Assumption assumption : assumptions) {
            Headline low = headline(build, resolved, assumption, assumption.low(), nominal);
            Headline high = headline(build, resolved, assumption, assumption.high(), nominal);
            entries.add(new LedgerEntry(assumption, low, high, weight(resolved, low, high)));
        }
        entries.sort(Comparator.comparingDouble(LedgerEntry::weight).reversed());
        return List.copyOf(entries);
    }

    /** An end of a range may contradict a value that the builder gave; then it moves nothing that could be told. */
    private static Headline headline(
            Build build, ResolvedBuild resolved, Assumption assumption, double value, Headline nominal) {
        if (value == assumption.value()) {
            return nominal;
        }
        return switch (Resolve.resolve(build, Map.of(assumption.path(), value))) {
            case Resolution.Resolved moved -> headline(moved.build(), resolved, nominal);
            case Resolution.Unusable unusable -> nominal;
        };
    }

    /** What a value leaves as it was is not computed again: brakes, clutch, heat. */
    private static Headline headline(ResolvedBuild moved, ResolvedBuild resolved, Headline nominal) {
        boolean sameCar = sameCar(moved, resolved);
        Headline brakes = sameCar ? nominal : Headlines.of(moved);
        boolean sameClutch = moved.clutch().equals(resolved.clutch());
        return brakes.with(
                sameClutch ? nominal.clutch() : Headlines.clutch(moved), heat(moved, resolved, nominal, sameCar));
    }

    /** Following the heat takes longest by far, so only what heat itself knows makes it be followed again. */
    private static @Nullable HeatHeadline heat(
            ResolvedBuild moved, ResolvedBuild resolved, Headline nominal, boolean sameCar) {
        if (nominal.heat() == null || !moved.heat().equals(resolved.heat())) {
            return nominal.heat() == null ? null : Headlines.heat(moved);
        }
        return sameCar ? nominal.heat() : null;
    }

    /** Most aims are only held against the results and move none of them. */
    private static boolean sameCar(ResolvedBuild one, ResolvedBuild other) {
        return one.aims().hardStopG() == other.aims().hardStopG()
                && one.car().equals(other.car())
                && one.front().equals(other.front())
                && one.rear().equals(other.rear())
                && one.pedal().equals(other.pedal())
                && one.apply().equals(other.apply())
                && one.frontCircuit().equals(other.frontCircuit())
                && one.rearCircuit().equals(other.rearCircuit());
    }

    private static double weight(ResolvedBuild build, Headline low, Headline high) {
        double effort = weight(low.effortN(), high.effortN(), build.aims().mostEffort());
        double travel = weight(low.travelM(), high.travelM(), build.aims().mostTravel());
        double critical = weight(
                low.criticalDecelerationG(),
                high.criticalDecelerationG(),
                build.car().grip());
        double beside = Math.max(clutch(build, low.clutch(), high.clutch()), heat(build, low.heat(), high.heat()));
        return Math.max(Math.max(effort, beside), Math.max(travel, critical));
    }

    /** Temperatures weigh by their rise over the rise that is allowed. */
    private static double heat(ResolvedBuild build, @Nullable HeatHeadline low, @Nullable HeatHeadline high) {
        if (low == null || high == null || build.heat().isEmpty()) {
            return 0;
        }
        ResolvedHeat heat = build.heat().get();
        double ambient = heat.ambient();
        double iron = Math.min(heat.front().rotor().limit(), heat.rear().rotor().limit());
        double face = weight(low.facePeakK() - ambient, high.facePeakK() - ambient, iron - ambient);
        double wet = heat.fluid().wet().orElse(LEAST_WET_BOILING);
        double fluid = weight(low.fluidPeakK() - ambient, high.fluidPeakK() - ambient, wet - ambient);
        double effort = weight(low.hotEffortN(), high.hotEffortN(), build.aims().mostEffort());
        return Math.max(effort, Math.max(face, fluid));
    }

    private static double clutch(ResolvedBuild build, @Nullable ClutchHeadline low, @Nullable ClutchHeadline high) {
        if (low == null || high == null || build.clutch().isEmpty()) {
            return 0;
        }
        ResolvedClutch clutch = build.clutch().get();
        double effort = weight(low.effortN(), high.effortN(), clutch.limits().mostEffort());
        double room = clutch.cover().mostBearingTravel();
        double spare = weight(room - low.spareM(), room - high.spareM(), room);
        OptionalDouble engine = clutch.limits().engineTorque();
        double torque = engine.isEmpty()
                ? 0
                : weight(
                        low.torqueNM(),
                        high.torqueNM(),
                        engine.getAsDouble() * clutch.limits().torqueReserve());
        return Math.max(effort, Math.max(spare, torque));
    }

    private static double weight(@Nullable Double low, @Nullable Double high, double limit) {
        if (low == null && high == null) {
            return 0;
        }
        if (low == null || high == null) {
            return CROSSED;
        }
        double moved = Math.abs(high - low) / limit;
        return low <= limit == high <= limit ? moved : moved + CROSSED;
    }
}
