package org.brakewright.analysis.tolerance;

import org.brakewright.analysis.WrittenCar;

/** Runs that come to their end. */
final class Runs {
    private Runs() {}

    static Tolerance of(WrittenCar car, Plan plan) {
        return switch (Tolerances.run(car.build(), plan, () -> false)) {
            case ToleranceOutcome.Done done -> done.tolerance();
            case ToleranceOutcome.Cancelled cancelled -> throw new AssertionError(cancelled);
            case ToleranceOutcome.Unusable unusable -> throw new AssertionError(unusable.problems());
        };
    }
}
