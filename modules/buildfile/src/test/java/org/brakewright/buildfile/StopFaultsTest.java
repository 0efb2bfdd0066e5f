package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Stops that cannot be driven are refused key by key, all at once, each with what is allowed. */
class StopFaultsTest {
    private static String with(String stops) {
        return Texts.larkspur() + "\nstops:\n" + stops;
    }

    @Test
    void everyValueOutOfItsLimitsIsToldAtOnce() {
        String text = with("""
                  speed: 3 m/s
                  rise: 0 s
                  slippery_grip: 3
                  peak_slip: 0.9
                  sliding_share: 1.2
                  front_wheel_inertia: 0 kg m2
                  rear_wheel_inertia: -1 kg m2
                  pitch:
                    period: 9 s
                    damping: -0.1
                """);
        assertThat(Texts.problems(text))
                .extracting(problem -> problem.problem().path())
                .containsExactly(
                        "stops.speed",
                        "stops.rise",
                        "stops.slippery_grip",
                        "stops.peak_slip",
                        "stops.sliding_share",
                        "stops.front_wheel_inertia",
                        "stops.rear_wheel_inertia",
                        "stops.pitch.period",
                        "stops.pitch.damping");
        assertThat(Texts.problems(text)).allSatisfy(problem -> {
            assertThat(problem.problem().allowed()).contains(" to ");
            assertThat(problem.problem().message()).contains("because");
        });
    }

    @Test
    void aBodyThatPitchesNeedsPeriodAndDamping() {
        assertThat(Texts.problems(with("  pitch: {period: 0.7 s}\n")))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.problem().path()).isEqualTo("stops.pitch.damping");
                    assertThat(problem.problem().message()).contains("missing");
                });
    }

    @Test
    void unknownKeysAndWrongUnitsAreTold() {
        assertThat(Texts.problems(with("  sped: 90 km/h\n  rise: 3 m\n")))
                .extracting(problem -> problem.problem().path())
                .containsExactly("stops.sped", "stops.rise");
    }
}
