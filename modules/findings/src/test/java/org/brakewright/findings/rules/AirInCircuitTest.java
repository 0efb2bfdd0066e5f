package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirInCircuitTest {
    private static final AirInCircuit RULE = new AirInCircuit();
    private static final String FRONT = "front_circuit";
    private static final String REAR = "rear_circuit";

    /** 100 cm3 in each circuit of which half is air: far more than a master of 28 mm can squeeze. */
    private static final TestCar SOFT = TestCar.twin()
            .with("lines.front.trapped_volume", "100 cc")
            .with("lines.rear.trapped_volume", "100 cc")
            .with("intent.air_in_one_circuit", "0.5");

    /** 500 N on the rear brakes alone, by hand: 3.162 m/s2. */
    private static final double REAR_ALONE = ByHand.pressure(500) * ByHand.REAR_PER_PASCAL / 800;

    /** The pressure that a bottomed master keeps on 50 cm3 of air is below 0.2 bar: next to nothing is added. */
    @Test
    void isNearlyAFailedCircuitWhenTheMasterBottoms() {
        Finding finding = about(FRONT, RULE, SOFT);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEqualTo("bottoms");
        assertThat(found(finding)).isBetween(REAR_ALONE, REAR_ALONE * 1.1);
        assertThat(limitValue(finding)).isEqualTo(2.55);
        assertThat(limit(finding).whose()).startsWith("as with that circuit failed: ");
        assertThat(figure("fall", finding)).isPositive();
    }

    /** Without any air every brake works: the tyres' grip of 0.9 g is less than the 10.5 m/s2 of the brakes. */
    @Test
    void isTheWholeCarWithoutAir() {
        Finding finding = about(REAR, RULE, TestCar.twin().with("intent.air_in_one_circuit", "0"));
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isBetween(0.8 * ByHand.G, 0.9 * ByHand.G + 1e-9);
        assertThat(figure("fall", finding)).isLessThanOrEqualTo(1e-9);
        assertThat(figure("air", finding)).isZero();
    }

    /** The law asks nothing about air: less than with a failed circuit is a caution. */
    @ParameterizedTest
    @CsvSource({"state_assessment, 5.5, FINE", "un_r13h, 5.5, CANNOT_TELL", "state_assessment, 3.5, CAUTION"})
    void isNeverAStop(String ruleSet, String ratio, State state) {
        assertThat(about(FRONT, RULE, SOFT.answeringTo(ruleSet).with("pedal.ratio", ratio))
                        .state())
                .isEqualTo(state);
    }

    @ParameterizedTest
    @CsvSource({"5.5, 109, at_stop", "5.5, 40, at_stop_below"})
    void saysThatThePedalMeetsItsStop(String ratio, int toStop, String variant) {
        TestCar car = SOFT.with("pedal.ratio", ratio).with("pedal.travel_to_stop", toStop + " mm");
        Finding finding = about(FRONT, RULE, car);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo(variant);
        assertThat(figure("travel", finding)).isCloseTo(toStop / 1000.0, within(1e-6));
    }

    /** Both circuits meet the same remembered figure; the one that leaves less speaks for both. */
    @Test
    void doesNotSayTwiceThatItCannotTell() {
        Facts facts = SOFT.answeringTo("un_r13h").facts();
        List<Failure> airy = facts.analysis().weakened().stream()
                .filter(failure -> failure.what() != Failure.What.FADE)
                .toList();
        assertThat(airy).hasSize(2);
        List<Finding> findings = RULE.judge(facts);
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
            assertThat(found(finding) / ByHand.G)
                    .isCloseTo(
                            airy.stream()
                                    .mapToDouble(Failure::decelerationG)
                                    .min()
                                    .orElseThrow(),
                            within(1e-12));
        });
    }

    @Test
    void isSilentInTrials() {
        Facts facts = SOFT.facts();
        assertThat(RULE.judge(new Facts(facts.build(), Analyse.forJudging(facts.build()))))
                .isEmpty();
    }
}
