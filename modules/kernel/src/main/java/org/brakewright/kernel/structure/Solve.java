package org.brakewright.kernel.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.kernel.structure.sparse.CholeskyFactor;

/**
 * Finds how a structure moves under loads, and the forces and stresses that follow: small motions, linear material. One
 * factorisation serves all load cases.
 */
public final class Solve {
    /** Pivots below this share of their diagonal make the structure suspect of being loose. */
    private static final double SUSPECT = 1e-9;

    private final StructureModel model;
    private final Leaders leaders;
    private final Assembly assembly;
    private final Equations equations;

    private Solve(StructureModel model) {
        this.model = model;
        this.leaders = Leaders.of(model);
        this.assembly = Assembly.of(model, leaders);
        this.equations = Equations.of(model, assembly);
    }

    /** The outcome for a model under each of the load cases. */
    public static StructureOutcome solve(StructureModel model, List<LoadCase> cases) {
        List<Fault> faults = ModelCheck.faults(model, cases);
        if (!faults.isEmpty()) {
            return new StructureOutcome.Refused(faults);
        }
        return new Solve(model).outcome(cases);
    }

    private StructureOutcome outcome(List<LoadCase> cases) {
        LooseParts loose = new LooseParts(model, assembly, equations, leaders);
        List<Loads> loads = cases.stream()
                .map(each -> Loads.of(each, model, leaders, assembly))
                .toList();
        Optional<StructureOutcome.Loose> asleep = loose.withoutResistance(loads);
        if (asleep.isPresent()) {
            return asleep.get();
        }
        Optional<CholeskyFactor> factor = CholeskyFactor.of(assembly.matrix(equations, 0));
        if (factor.isEmpty() || factor.get().leastPivot() < SUSPECT) {
            Optional<StructureOutcome.Loose> found = loose.byFreeMotion(factor.isEmpty());
            if (found.isPresent()) {
                return found.get();
            }
        }
        return solved(cases, loads, factor.orElseThrow());
    }

    private StructureOutcome solved(List<LoadCase> cases, List<Loads> loads, CholeskyFactor factor) {
        List<CaseResult> results = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            results.add(result(cases.get(i), loads.get(i), factor));
        }
        return new StructureOutcome.Solved(results);
    }

    /** Solves once, then corrects once by what is left over: that restores the figures that soft plates lose. */
    private CaseResult result(LoadCase loadCase, Loads loads, CholeskyFactor factor) {
        double[] motion = loads.settlements();
        double[] applied = loads.forces();
        double[] first = leftOver(applied, motion);
        equations.scatter(factor.solve(first), motion);
        equations.scatter(factor.solve(leftOver(applied, motion)), motion);
        double[] holding = assembly.times(motion);
        double residual = norm(leftOver(applied, motion)) / Math.max(norm(first), Double.MIN_NORMAL);
        return new CaseResult(
                loadCase, new Equilibrium(motion, difference(holding, applied), residual), model, leaders, assembly);
    }

    private double[] leftOver(double[] applied, double[] motion) {
        return equations.gather(difference(applied, assembly.times(motion)));
    }

    private static double[] difference(double[] one, double[] other) {
        double[] difference = one.clone();
        for (int i = 0; i < difference.length; i++) {
            difference[i] -= other[i];
        }
        return difference;
    }

    private static double norm(double[] vector) {
        double sum = 0;
        for (double entry : vector) {
            sum += entry * entry;
        }
        return Math.sqrt(sum);
    }
}
