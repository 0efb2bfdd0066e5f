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
import org.jspecify.annotations.Nullable;

/** Moves every assumption across its range, one at a time, and ranks them: what to measure next. */
public final class Ledger {
    private static final double CROSSED = 1;

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

    /** What a value leaves as it was is not computed again: brakes, clutch, or both. */
    private static Headline headline(ResolvedBuild moved, ResolvedBuild resolved, Headline nominal) {
        Headline brakes = sameCar(moved, resolved) ? nominal : Headlines.of(moved);
        boolean sameClutch = moved.clutch().equals(resolved.clutch());
        return brakes.withClutch(sameClutch ? nominal.clutch() : Headlines.clutch(moved));
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
        return Math.max(Math.max(effort, clutch(build, low.clutch(), high.clutch())), Math.max(travel, critical));
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
