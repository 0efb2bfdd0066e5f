package org.brakewright.findings.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.all;
import static org.brakewright.findings.Judgement.cure;
import static org.brakewright.findings.Judgement.found;

import java.util.List;
import java.util.Map;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.Assess;
import org.brakewright.findings.AssessOutcome;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.findings.cure.Change.Kind;
import org.junit.jupiter.api.Test;

class CuresTest {
    /** Rear pads of 0.50: 0.373 of the force behind, rear first from (0.5 - 0.373)/0.2 = 0.634 g on, grip 0.9. */
    private static final TestCar REAR_FIRST = TestCar.twin().with("rear.pad_friction", "0.50");

    /** The same with a front caliper rated just above the hard stop's pressure and below that of a panic push. */
    private static final TestCar WEAK_CALIPER =
            REAR_FIRST.with("front.rated_pressure", "38.5 bar").with("intent.panic_push", "500 N");

    /**
     * For 0.945 g the rear may have 0.311 of the force: 0.5(1 - s)/(0.84 s + 0.5(1 - s)) = 0.311 gives a front share s
     * of the bar of 0.5687, so the bearing 4.4 mm toward the front: five turns of 1 mm, four are not enough.
     */
    @Test
    void theRearIsCuredByTheFewestTurns() {
        Cure cure = cure(rearFirst(assessed(REAR_FIRST)));
        assertThat(cure.change().kind()).isEqualTo(Kind.TURN_BAR);
        assertThat(cure.change().amount()).isEqualTo(5);
        assertThat(cure.change().values().get("apply.balance_bar.offset")).isCloseTo(0.005, within(1e-12));
        assertThat(cure.becomes()).isEqualTo(State.FINE);
        assertThat(cure.worse()).isEmpty();
        assertThat(rearFirst(all(REAR_FIRST, Map.of("apply.balance_bar.offset", 0.004)))
                        .state())
                .isEqualTo(State.CAUTION);
    }

    /** What the cure promises is what the car does when it is written down. */
    @Test
    void aCureTellsEffortTravelAndBalanceAfterIt() {
        Cure cure = cure(rearFirst(assessed(REAR_FIRST)));
        TestCar cured = REAR_FIRST.with("apply.balance_bar.offset", "5 mm");
        Headline after = Headline.of(cured.facts().analysis());
        assertThat(cure.after().effortN()).isNotNull().isEqualTo(after.effortN());
        assertThat(cure.after().travelM()).isNotNull().isEqualTo(after.travelM());
        assertThat(cure.after().frontShare()).isNotNull().isEqualTo(after.frontShare());
        assertThat(cure.after().criticalDecelerationG()).isNotNull().isEqualTo(after.criticalDecelerationG());
        assertThat(rearFirst(assessed(cured)).state()).isEqualTo(State.FINE);
    }

    /**
     * Whatever fully cures the rear gives the front 0.689 of the 7061 N of the hard stop, which takes 38.8 bar: more than
     * this front caliper is rated for. Four turns stay below that and lift the stop to a caution.
     */
    @Test
    void noCureMakesANewStop() {
        List<Finding> findings = assessed(WEAK_CALIPER);
        List<Finding> turned = all(WEAK_CALIPER, Map.of("apply.balance_bar.offset", 0.005));
        assertThat(about("front", "part_rating", findings).state()).isEqualTo(State.CAUTION);
        assertThat(about("front", "part_rating", turned).state()).isEqualTo(State.STOP);
        assertThat(cure(rearFirst(findings)).becomes()).isEqualTo(State.CAUTION);
        assertThat(cure(rearFirst(findings)).change().amount()).isEqualTo(4);
        assertThat(findings)
                .filteredOn(each -> each.cure() != null)
                .allSatisfy(each -> assertThat(stops(findings))
                        .containsAll(stops(all(WEAK_CALIPER, cure(each).change().values()))));
    }

    /**
     * Turning the bar toward the rear would spare that caliper, and let the rear lock far below 0.63 g: a stop
     * that stays a stop but gets worse.
     */
    @Test
    void noCureMakesAStopWorse() {
        List<Finding> findings = assessed(WEAK_CALIPER);
        List<Finding> turned = all(WEAK_CALIPER, Map.of("apply.balance_bar.offset", -0.006));
        assertThat(about("front", "part_rating", turned).state()).isEqualTo(State.FINE);
        assertThat(found(rearFirst(turned))).isLessThan(found(rearFirst(findings)));
        assertThat(findings)
                .filteredOn(each -> each.cure() != null)
                .isNotEmpty()
                .allSatisfy(each -> {
                    Finding rear =
                            rearFirst(all(WEAK_CALIPER, cure(each).change().values()));
                    assertThat(rear.state() != State.STOP || found(rear) > found(rearFirst(findings)) - 1e-4)
                            .isTrue();
                });
    }

    /** A rear that always locks first has no number that could tell whether a change makes it worse. */
    @Test
    void whileTheRearAlwaysLocksFirstOnlyThatIsCured() {
        TestCar car = TestCar.twin().with("rear.pad_friction", "0.85").with("intent.most_effort", "300 N");
        List<Finding> findings = assessed(car);
        assertThat(rearFirst(findings).variant()).isEqualTo("always");
        assertThat(findings)
                .filteredOn(each -> each.cure() != null)
                .isNotEmpty()
                .allSatisfy(each -> {
                    Finding rear = rearFirst(all(car, cure(each).change().values()));
                    assertThat(rear.state() == State.STOP && rear.variant().equals("always"))
                            .isFalse();
                });
    }

    /**
     * Rear brakes too strong for the balance and, at a ratio of 3.5, too weak to stop the car alone: lowering the rear
     * pressure cures the first and makes the second worse, which is said.
     */
    @Test
    void aLesserStopThatGetsWorseIsNamed() {
        TestCar car = REAR_FIRST.with("pedal.ratio", "3.0");
        List<Finding> findings = assessed(car);
        Finding failed = about("front_circuit", "failed_circuit", findings);
        assertThat(failed.state()).isEqualTo(State.STOP);
        Cure cure = cure(rearFirst(findings));
        assertThat(cure.becomes()).isNotEqualTo(State.STOP);
        assertThat(cure.worse())
                .filteredOn(each -> each.sameJudgement(failed))
                .singleElement()
                .satisfies(each -> assertThat(found(each)).isLessThan(found(failed)));
    }

    /** A tandem car at 327 N and 71.55 mm: a smaller bore lowers the effort and, without a bar, only lengthens the travel. */
    @Test
    void costsAreNamed() {
        TestCar car = TestCar.tandem().with("intent.most_effort", "310 N").with("intent.most_travel", "71.6 mm");
        Finding finding = about("", "pedal_effort", assessed(car));
        Cure cure = cure(finding);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(cure.change().kind()).isEqualTo(Kind.TANDEM_BORE);
        assertThat(cure.change().amount()).isEqualTo(-1);
        assertThat(cure.becomes()).isEqualTo(State.FINE);
        assertThat(cure.worse()).extracting(Finding::key).contains("pedal_travel");
        List<Finding> after = all(car, cure.change().values());
        assertThat(about("", "pedal_travel", after).state()).isEqualTo(State.CAUTION);
    }

    /** Where a change without cost exists it is preferred, though it is more work. */
    @Test
    void aCureWithoutCostIsPreferred() {
        Cure cure = cure(about("", "pedal_effort", assessed(TestCar.twin().with("intent.most_effort", "400 N"))));
        assertThat(cure.becomes()).isEqualTo(State.FINE);
        assertThat(cure.worse()).isEmpty();
    }

    @Test
    void aStopMayOnlyBeLifted() {
        TestCar car = TestCar.twin()
                .with("rear.pad_friction", "0.60")
                .with("intent.balance_margin", "0.50")
                .without("pedal.ratio")
                .with("pedal.linkage.pad_arm", "275 mm")
                .with("pedal.linkage.pushrod_arm", "50 mm")
                .withValve("40 bar", "0.9", false);
        Cure cure = cure(rearFirst(assessed(car)));
        assertThat(cure.becomes()).isEqualTo(State.CAUTION);
        assertThat(rearFirst(all(car, cure.change().values())).state()).isEqualTo(State.CAUTION);
    }

    /** No single change halves the effort of a car of ten tonnes on pads of wood. */
    @Test
    void whereNothingHelpsThereIsNoCure() {
        Finding finding = about("", "pedal_effort", assessed(TestCar.hopeless()));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.cure()).isNull();
    }

    @Test
    void whatIsFineOrUnknownIsNotCured() {
        assertThat(assessed(REAR_FIRST))
                .filteredOn(each -> each.state() == State.FINE || each.state() == State.CANNOT_TELL)
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.cure()).isNull());
    }

    private static List<Finding> assessed(TestCar car) {
        return switch (Assess.assess(car.build())) {
            case AssessOutcome.Assessed assessed -> assessed.assessment().findings();
            case AssessOutcome.Unusable unusable -> throw new AssertionError("unusable: " + unusable.problems());
        };
    }

    private static Finding rearFirst(List<Finding> findings) {
        return about("driver", "rear_locks_first", findings);
    }

    private static List<String> stops(List<Finding> findings) {
        return findings.stream()
                .filter(each -> each.state() == State.STOP)
                .map(each -> each.key() + "/" + each.subject())
                .toList();
    }
}
