package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResolveHeatTest {
    private static final WrittenCar EVENTS = Cars.TWIN.with("""
            heat.schedules[0].kind: events
            heat.schedules[0].name: lap
            heat.schedules[0].events[0].start: 10 s
            heat.schedules[0].events[0].from_speed: 40 m/s
            heat.schedules[0].events[0].to_speed: 10 m/s
            heat.schedules[0].events[0].deceleration: 6 m/s2
            heat.schedules[0].events[1].start: 40 s
            heat.schedules[0].events[1].from_speed: 30 m/s
            heat.schedules[0].events[1].to_speed: 12 m/s
            heat.schedules[0].events[1].deceleration: 6 m/s2
            """);

    private static final WrittenCar LOG = Cars.TWIN.with("""
            heat.schedules[0].kind: speed_log
            heat.schedules[0].name: log
            heat.schedules[0].points[0].time: 0 s
            heat.schedules[0].points[0].speed: 30 m/s
            heat.schedules[0].points[1].time: 4 s
            heat.schedules[0].points[1].speed: 10 m/s
            """);

    private static final WrittenCar SNUBS = Cars.TWIN.with("""
            heat.schedules[0].kind: snubs
            heat.schedules[0].name: three
            heat.schedules[0].from_speed: 30 m/s
            heat.schedules[0].to_speed: 10 m/s
            heat.schedules[0].deceleration: 5 m/s2
            heat.schedules[0].count: 3
            heat.schedules[0].interval: 24 s
            """);

    @Test
    void takesWhatCanBeDriven() {
        for (WrittenCar car : List.of(EVENTS, LOG, SNUBS)) {
            assertThat(car.problems()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "events[1].start: 14 s | heat.schedules[0].events[1].start",
                "events[1].start: 2 s | heat.schedules[0].events[1].start",
                "events[0].to_speed: 41 m/s | heat.schedules[0].events[0].to_speed",
                "laps: 3 | heat.schedules[0].lap_time",
                "laps: 2.5 | heat.schedules[0].lap_time"
            })
    void refusesEventsOutOfOrder(String change, String path) {
        assertThat(EVENTS.with("heat.schedules[0]." + change).problems())
                .extracting(Problem::path)
                .contains(path);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "points[1].time: 0 s | order of time",
                "points[1].time: 6 s | gap",
            })
    void refusesLogsThatHideSomething(String change, String words) {
        List<Problem> problems = LOG.with("heat.schedules[0]." + change).problems();
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo("heat.schedules[0].points[1].time");
            assertThat(problem.message()).contains(words);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heat.schedules[0].interval: 4 s | heat.schedules[0].interval",
                "heat.schedules[0].count: 2.5 | heat.schedules[0].count",
                "heat.schedules[0].to_speed: 30 m/s | heat.schedules[0].to_speed",
                "heat.front.outer_diameter: 230 mm | heat.front.outer_diameter",
                "heat.front.drum_width: 40 mm | heat.front.drum_width",
                "heat.front.vent_count: 30 | heat.front.vent_count",
                "heat.front.vent_gap: 20 mm | heat.front.vent_gap",
                "heat.front.fade_from: 600 °C | heat.front.fade_from"
            })
    void refusesWhatDoesNotFit(String change, String path) {
        assertThat(SNUBS.with(change).problems()).extracting(Problem::path).containsExactly(path);
    }

    @Test
    void refusesACurveThatTurnsBack() {
        WrittenCar car = SNUBS.with("""
                heat.front.friction_curve[0].temperature: 300 °C
                heat.front.friction_curve[0].friction: 0.4
                heat.front.friction_curve[1].temperature: 200 °C
                heat.front.friction_curve[1].friction: 0.3
                """);
        assertThat(car.problems())
                .extracting(Problem::path)
                .containsExactly("heat.front.friction_curve[1].temperature");
    }

    @Test
    void refusesFluidThatBoilsLaterWet() {
        WrittenCar car = SNUBS.with("fluid.dry_boiling_point: 230 °C\nfluid.wet_boiling_point: 240 °C");
        assertThat(car.problems()).extracting(Problem::path).containsExactly("fluid.wet_boiling_point");
    }

    /** What is assumed stands in the ledger, with a range, by name; nothing of it when no schedule is given. */
    @Test
    void assumesOpenly() {
        assertThat(SNUBS.ledger())
                .extracting(Assumption::path)
                .contains("heat.ambient", "heat.front.rotor_mass", "heat.rear.lining_limit", "heat.front.airflow");
        assertThat(Cars.TWIN.ledger()).extracting(Assumption::path).noneMatch(path -> path.startsWith("heat"));
    }
}
