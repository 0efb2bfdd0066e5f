package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.model.Build;
import org.brakewright.model.resolved.Aims;
import org.jspecify.annotations.Nullable;

/** Propagates every tolerance and every assumed range of a build through the whole car. */
public final class Tolerances {
    private Tolerances() {}

    /**
     * Runs a build.
     *
     * @param cancelled asked now and then from several threads; true ends the run without an answer
     */
    public static ToleranceOutcome run(Build build, Plan plan, BooleanSupplier cancelled) {
        return switch (Resolve.resolve(build)) {
            case Resolution.Unusable unusable -> new ToleranceOutcome.Unusable(unusable.problems());
            case Resolution.Resolved resolved -> run(build, resolved, plan, cancelled);
        };
    }

    private static ToleranceOutcome run(
            Build build, Resolution.Resolved resolved, Plan plan, BooleanSupplier cancelled) {
        List<Input> inputs = Inputs.of(build, resolved.ledger());
        Draw draw = new Draw(build, inputs, plan);
        if (!draw.all(plan.threads(), cancelled)) {
            return new ToleranceOutcome.Cancelled();
        }
        Analysis nominal = Analyse.forJudging(resolved.build(), null);
        Drawn drawn = draw.drawn();
        return new ToleranceOutcome.Done(new Tolerance(
                plan.samples(),
                plan.seed(),
                plan.samples() - drawn.samples().size(),
                inputs,
                Inputs.heldStill(build, inputs),
                spreads(nominal, resolved.build().aims(), drawn),
                outOfTravel(drawn.samples()),
                rearFirst(nominal.loadCases(), drawn.samples())));
    }

    private static List<Spread> spreads(Analysis nominal, Aims aims, Drawn drawn) {
        List<Spread> spreads = new ArrayList<>(atTheHardStop(nominal.hardStop(), aims, drawn));
        for (int i = 0; i < nominal.loadCases().size(); i++) {
            LoadCaseResult loadCase = nominal.loadCases().get(i);
            Double critical = loadCase.criticalDecelerationG();
            int number = i;
            spreads.add(drawn.spread(
                    new Spread.Of(Measure.CRITICAL_DECELERATION, loadCase.name(), critical, null, sample -> false),
                    sample -> sample.cases().get(number).critical()));
        }
        return List.copyOf(spreads);
    }

    private static List<Spread> atTheHardStop(@Nullable HardStop stop, Aims aims, Drawn drawn) {
        Double effort = stop == null ? null : stop.point().pedalForceN();
        Double travel = stop == null ? null : stop.point().pedalTravelM();
        Double share = stop == null ? null : stop.frontShare();
        Double ideal = stop == null ? null : stop.idealFrontShare();
        double most = aims.mostEffort();
        double furthest = aims.mostTravel();
        return List.of(
                drawn.spread(
                        new Spread.Of(Measure.EFFORT, null, effort, most, sample -> sample.effort() > most),
                        Sample::effort),
                drawn.spread(
                        new Spread.Of(Measure.TRAVEL, null, travel, furthest, sample -> sample.travel() > furthest),
                        Sample::travel),
                drawn.spread(
                        new Spread.Of(
                                Measure.FRONT_SHARE,
                                null,
                                share,
                                ideal,
                                sample -> sample.frontShare() < sample.idealFrontShare()),
                        Sample::frontShare));
    }

    private static double outOfTravel(List<Sample> samples) {
        long out = samples.stream().filter(sample -> !sample.withinTravel()).count();
        return samples.isEmpty() ? 0 : (double) out / samples.size();
    }

    private static List<RearFirstOdds> rearFirst(List<LoadCaseResult> cases, List<Sample> samples) {
        List<RearFirstOdds> odds = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            odds.add(RearFirstOdds.of(cases.get(i).name(), i, samples));
        }
        return List.copyOf(odds);
    }
}
