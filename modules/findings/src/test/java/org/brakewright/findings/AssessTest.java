package org.brakewright.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.analysis.ledger.Headline;
import org.junit.jupiter.api.Test;

class AssessTest {
    private static final TestCar REAR_FIRST = TestCar.twin().with("rear.pad_friction", "0.50");

    @Test
    void tellsTheWorstFirst() {
        List<Finding> findings =
                assessed(REAR_FIRST.with("checks.no_leak", "no")).findings();
        assertThat(findings).extracting(Finding::state).isSorted().contains(State.STOP, State.CANNOT_TELL, State.FINE);
    }

    /** Findings of one state stand in the order of the rules: what turns the car round before a leaking joint. */
    @Test
    void keepsTheOrderOfTheRulesWithinAState() {
        List<Finding> stops = assessed(REAR_FIRST.with("checks.no_leak", "no")).findings().stream()
                .filter(each -> each.state() == State.STOP)
                .toList();
        assertThat(stops).extracting(Finding::key).containsExactly("rear_locks_first", "checked_on_car");
    }

    @Test
    void theWorstFindingIsTheVerdict() {
        assertThat(assessed(REAR_FIRST).verdict()).isEqualTo(State.STOP);
        assertThat(assessed(TestCar.twin().with("intent.most_effort", "300 N")).verdict())
                .isEqualTo(State.CAUTION);
        assertThat(assessed(TestCar.twin()).verdict()).isEqualTo(State.CANNOT_TELL);
        assertThat(assessed(lookedAt(filled(TestCar.twin()))).verdict()).isEqualTo(State.FINE);
    }

    @Test
    void withoutFindingsNothingCanBeTold() {
        Assessment assessed = assessed(TestCar.twin());
        Assessment bare = new Assessment(
                assessed.build(),
                assessed.resolved(),
                assessed.analysis(),
                assessed.headline(),
                assessed.feel(),
                assessed.solution(),
                List.of(),
                assessed.ledger());
        assertThat(bare.verdict()).isEqualTo(State.CANNOT_TELL);
    }

    @Test
    void everyRuleThatAppliesHasSpoken() {
        assertThat(assessed(TestCar.twin()).findings())
                .extracting(Finding::key)
                .contains("rear_locks_first", "pedal_effort", "pedal_travel", "pedal_reserve", "master_stroke")
                .contains("failed_circuit", "front_share", "bar_range", "bar_tilt", "part_rating")
                .contains("adjustable_balance", "checked_on_car");
    }

    /** The same build gives the same findings, cures and ledger. */
    @Test
    void saysTheSameTwice() {
        Assessment one = assessed(REAR_FIRST);
        Assessment other = assessed(REAR_FIRST);
        assertThat(one.findings()).isEqualTo(other.findings());
        assertThat(one.headline()).isEqualTo(other.headline());
        assertThat(one.ledger()).isEqualTo(other.ledger());
    }

    @Test
    void effortTravelAndBalanceComeTogether() {
        Headline headline = assessed(TestCar.twin()).headline();
        assertThat(headline.effortN()).isNotNull();
        assertThat(headline.travelM()).isNotNull();
        assertThat(headline.frontShare()).isNotNull();
        assertThat(headline.criticalDecelerationG()).isNotNull();
    }

    /** A bearing past the adjuster's end: the values contradict each other. */
    @Test
    void contradictionsAreProblemsNotFindings() {
        TestCar car = TestCar.twin().with("apply.balance_bar.offset", "12 mm");
        assertThat(Assess.assess(car.build())).isInstanceOfSatisfying(AssessOutcome.Unusable.class, unusable -> {
            assertThat(unusable.problems()).hasSize(1);
            assertThat(unusable.problems().getFirst().path()).isEqualTo("apply.balance_bar.offset");
        });
    }

    private static TestCar lookedAt(TestCar car) {
        TestCar looked = car.with("apply.balance_bar.locked_for_road", "yes").withParkingBrake();
        for (String check : List.of(
                "pushrods_retained", "free_play_present", "pedal_returns", "no_leak", "pedal_holds", "brake_lights")) {
            looked = looked.with("checks." + check, "yes");
        }
        return looked;
    }

    private static Assessment assessed(TestCar car) {
        return switch (Assess.assess(car.build())) {
            case AssessOutcome.Assessed assessed -> assessed.assessment();
            case AssessOutcome.Unusable unusable -> throw new AssertionError("unusable: " + unusable.problems());
        };
    }

    /** Eight pistons of 36 mm in front and four behind take 65 and 33 cc over 8 mm. */
    private static TestCar filled(TestCar car) {
        return car.with("front.pad_wear", "7 mm")
                .with("rear.pad_wear", "7 mm")
                .with("lines.front.reservoir_volume", "80 cc")
                .with("lines.rear.reservoir_volume", "80 cc");
    }
}
