package org.brakewright.kernel.ode;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/** Integrates rates with the error of each step held: Dormand and Prince, order 8 with estimates of order 5 and 3. */
public final class Integrator {
    private static final double SMALLEST_STEP = 1e-12;
    private static final int MOST_EVALUATIONS = 2_000_000;

    /** How closely a threshold is found, of the span. */
    private static final double CLOSE = 1e-12;

    private static final int MOST_TRIES = 200;
    private static final int NONE = -1;

    private Integrator() {}

    /**
     * Moves a state over a span of time within which its rates are smooth.
     *
     * @param rates of the state
     * @param span of time
     * @param state at its start, and when this returns at its end
     * @param precision of each step
     * @param watcher sees the state as often as the span says, and may end the way
     */
    public static Integration follow(Rates rates, Span span, double[] state, Precision precision, Watcher watcher) {
        double length = span.to() - span.from();
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(
                SMALLEST_STEP * length, length, precision.absolute(), precision.relative());
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        if (span.looks() > 0) {
            integrator.addStepHandler(new Looks(span, watcher));
        }
        Ends ends = new Ends(watcher.ends(), length);
        ends.addTo(integrator);
        try {
            ODEStateAndDerivative end = integrator.integrate(
                    new Equations(rates, state.length), new ODEState(span.from(), state), span.to());
            double[] reached = end.getPrimaryState();
            System.arraycopy(reached, 0, state, 0, reached.length);
            return ended(end, ends.passed, integrator.getEvaluations());
        } catch (MathIllegalStateException | MathIllegalArgumentException e) {
            return new Integration.Stuck(String.valueOf(e.getMessage()));
        }
    }

    private static Integration ended(ODEStateAndDerivative end, int threshold, int evaluations) {
        for (double value : end.getPrimaryState()) {
            if (!Double.isFinite(value)) {
                return new Integration.Stuck("the rates are no numbers");
            }
        }
        return threshold == NONE
                ? new Integration.Reached(evaluations)
                : new Integration.Ended(end.getTime(), threshold, evaluations);
    }

    private record Equations(Rates rates, int places) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return places;
        }

        @Override
        public double[] computeDerivatives(double time, double[] state) {
            double[] derivatives = new double[places];
            rates.at(time, state, derivatives);
            return derivatives;
        }
    }

    /** The watcher's thresholds, and the one that was passed. */
    private static final class Ends {
        private final List<Threshold> thresholds;
        private final double length;
        private int passed = NONE;

        Ends(List<Threshold> thresholds, double length) {
            this.thresholds = thresholds;
            this.length = length;
        }

        void addTo(DormandPrince853Integrator integrator) {
            for (int i = 0; i < thresholds.size(); i++) {
                int which = i;
                Threshold threshold = thresholds.get(i);
                integrator.addEventDetector(new Detector(threshold, length, (state, detector, rising) -> {
                    if (rising) {
                        return Action.CONTINUE;
                    }
                    passed = which;
                    return Action.STOP;
                }));
            }
        }
    }

    private record Detector(Threshold threshold, double length, ODEEventHandler handler) implements ODEEventDetector {
        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(length);
        }

        @Override
        public int getMaxIterationCount() {
            return MOST_TRIES;
        }

        @Override
        public BracketingNthOrderBrentSolver getSolver() {
            return new BracketingNthOrderBrentSolver(0, CLOSE * length, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return handler;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return threshold.at(state.getTime(), state.getPrimaryState());
        }
    }

    /** Looks between the steps. */
    private static final class Looks implements ODEStepHandler {
        private final Span span;
        private final Watcher watcher;
        private int next = 1;

        Looks(Span span, Watcher watcher) {
            this.span = span;
            this.watcher = watcher;
        }

        @Override
        public void handleStep(ODEStateInterpolator interpolator) {
            double end = interpolator.getCurrentState().getTime();
            while (next <= span.looks() && span.look(next) <= end) {
                double time = span.look(next);
                watcher.see(time, interpolator.getInterpolatedState(time).getPrimaryState());
                next++;
            }
        }

        @Override
        public void finish(ODEStateAndDerivative last) {
            if (next == span.looks() && last.getTime() >= span.to() - CLOSE * (span.to() - span.from())) {
                watcher.see(last.getTime(), last.getPrimaryState());
            }
        }
    }
}
