package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.clutch.Clutches;
import org.brakewright.analysis.heat.HotCars;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What contradicts in heat and clutch is told with field, value and what is allowed, in numbers, all at once. */
class HeatAndClutchFaultsTest {
    private static final WrittenCar LAP = HotCars.STOP.without("heat.schedules").with("""
            heat.schedules[0].kind: events
            heat.schedules[0].name: lap
            heat.schedules[0].events[0].start: 10 s
            heat.schedules[0].events[0].from_speed: 30 m/s
            heat.schedules[0].events[0].to_speed: 10 m/s
            heat.schedules[0].events[0].deceleration: 5 m/s2
            heat.schedules[0].events[1].start: 12 s
            heat.schedules[0].events[1].from_speed: 30 m/s
            heat.schedules[0].events[1].to_speed: 10 m/s
            heat.schedules[0].events[1].deceleration: 5 m/s2
            """);

    private static final WrittenCar SNUBS =
            HotCars.STOP.without("heat.schedules").with("""
            heat.schedules[0].kind: snubs
            heat.schedules[0].name: three
            heat.schedules[0].from_speed: 30 m/s
            heat.schedules[0].to_speed: 10 m/s
            heat.schedules[0].deceleration: 5 m/s2
            heat.schedules[0].count: 3
            heat.schedules[0].interval: 3 s
            """);

    /** (30 - 10)/5 = 4 s of braking; 1 in of stroke over a fork ratio of 1; 8 mm that free row E6's plate. */
    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        LAP,
                        "heat.schedules[0].events[1].start",
                        "12 s",
                        "not before the end of the event above, at 14 s"),
                Arguments.of(SNUBS, "heat.schedules[0].interval", "3 s", "more than the time of a snub, 4 s"),
                Arguments.of(
                        Clutches.RING.with("clutch.bearing.preload: 40 mm"),
                        "clutch.bearing.preload",
                        "40 mm",
                        "at most the slave's stroke over the fork ratio, 25.4 mm"),
                Arguments.of(
                        Clutches.FORK.with("clutch.cover.most_bearing_travel: 7 mm"),
                        "clutch.cover.most_bearing_travel",
                        "7 mm",
                        "more than the travel that frees it, 8 mm"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void tellsWhatIsAllowedInNumbers(WrittenCar car, String path, String value, String allowed) {
        assertThat(car.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo(path);
            assertThat(problem.value()).isEqualTo(value);
            assertThat(problem.allowed()).isEqualTo(allowed);
            assertThat(problem.message()).endsWith(".");
        });
    }

    @Test
    void tellsAllAtOnce() {
        WrittenCar car = Clutches.FORK
                .with("clutch.cover.most_bearing_travel: 7 mm")
                .with("clutch.plate.inner_diameter: 200 mm")
                .with("clutch.bearing.preload: 40 mm");
        assertThat(car.problems())
                .extracting(Problem::path)
                .containsExactlyInAnyOrder(
                        "clutch.cover.most_bearing_travel", "clutch.plate.inner_diameter", "clutch.bearing.preload");
    }
}
