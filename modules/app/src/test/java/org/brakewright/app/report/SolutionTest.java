package org.brakewright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.analysis.solution.Solution;
import org.brakewright.app.Cars;
import org.junit.jupiter.api.Test;

/** What the example cars tell, put back into the equations. */
class SolutionTest {
    /** The searches end at steps of one part in 10^9; no gauge reads so fine. */
    private static final double BOUND = 1e-9;

    @Test
    void everyExampleIsSolvedThroughout() {
        for (String car : Cars.ALL) {
            Solution solution = Cars.assessed(Cars.text(car)).solution();
            assertThat(solution.residual()).as(car).isBetween(0.0, BOUND);
            assertThat(solution.solved()).as(car).isGreaterThan(10);
            assertThat(solution.ended()).as(car).isEqualTo(Solution.Ended.REACHED);
        }
    }
}
