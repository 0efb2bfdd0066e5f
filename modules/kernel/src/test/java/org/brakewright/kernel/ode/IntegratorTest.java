package org.brakewright.kernel.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

class IntegratorTest {
    private static final Precision FINE = new Precision(1e-12, 1e-12);

    @Test
    void holdsThePage() {
        WorkedExample page = WorkedExample.of("integration");
        double[] state = {page.si("excess")};
        double tau = page.si("time constant");
        Rates cooling = (time, at, rates) -> rates[0] = -at[0] / tau;
        Integration ended = Integrator.follow(cooling, new Span(0, page.si("time"), 0), state, FINE, Watcher.NOBODY);
        assertThat(ended).isInstanceOf(Integration.Reached.class);
        page.holds("excess left", state[0]);
    }

    /** Closed form: a circle once around comes back; the energy of the swing stays. Looks fall where they were asked for. */
    @Test
    void goesRoundTheCircle() {
        double[] state = {1, 0};
        Rates circle = (time, at, rates) -> {
            rates[0] = -at[1];
            rates[1] = at[0];
        };
        List<double[]> seen = new ArrayList<>();
        Span once = new Span(0, 2 * Math.PI, 8);
        Integrator.follow(circle, once, state, FINE, (time, at) -> seen.add(new double[] {time, at[0], at[1]}));
        assertThat(state[0]).isCloseTo(1, within(1e-10));
        assertThat(state[1]).isCloseTo(0, within(1e-10));
        assertThat(seen).hasSize(8).allSatisfy(look -> {
            assertThat(look[1]).isCloseTo(Math.cos(look[0]), within(1e-7));
            assertThat(look[2]).isCloseTo(Math.sin(look[0]), within(1e-7));
        });
        assertThat(seen.get(1)[0]).isCloseTo(Math.PI / 2, within(1e-12));
    }

    /** Closed form: the cosine falls through a half at a third of pi; the sine only rises through it before. */
    @Test
    void endsWhereAThresholdIsPassedDownward() {
        double[] state = {1, 0};
        Rates circle = (time, at, rates) -> {
            rates[0] = -at[1];
            rates[1] = at[0];
        };
        Watcher watcher = new Watcher() {
            @Override
            public void see(double time, double[] at) {}

            @Override
            public List<Threshold> ends() {
                return List.of((time, at) -> at[1] - 0.5, (time, at) -> at[0] - 0.5);
            }
        };
        assertThat(Integrator.follow(circle, new Span(0, 6, 0), state, FINE, watcher))
                .isInstanceOfSatisfying(Integration.Ended.class, ended -> {
                    assertThat(ended.threshold()).isEqualTo(1);
                    assertThat(ended.time()).isCloseTo(Math.PI / 3, within(1e-9));
                });
        assertThat(state[0]).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void saysWhenItIsStuck() {
        double[] state = {1};
        Rates blowUp = (time, at, rates) -> rates[0] = at[0] * at[0]; // 1/(1 - t): no value at 1
        assertThat(Integrator.follow(blowUp, new Span(0, 2, 0), state, FINE, Watcher.NOBODY))
                .isInstanceOf(Integration.Stuck.class);
        double[] other = {1};
        Rates nothing = (time, at, rates) -> rates[0] = Double.NaN;
        assertThat(Integrator.follow(nothing, new Span(0, 2, 0), other, FINE, Watcher.NOBODY))
                .isInstanceOf(Integration.Stuck.class);
    }

    @Test
    void refusesTimeThatRunsBackward() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(1, 1, 0)).withMessageContaining("1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Precision(0, 1e-6))
                .withMessageContaining("0.0");
    }
}
