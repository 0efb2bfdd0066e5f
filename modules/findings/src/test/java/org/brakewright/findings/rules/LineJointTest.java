package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineJointTest {
    private static final LineJoint RULE = new LineJoint();

    /** An inverted flare with its nut in its own seat: SAE J512, J533 (secondary source). */
    @Test
    void aMatedLineIsFine() {
        assertThat(only(RULE, Plumbed.car()).state()).isEqualTo(State.FINE);
    }

    /** Wrong pairs of SAE J512, SAE J514, ISO 4038 and ISO 13486 (secondary source); each is told at the joint it is at. */
    @ParameterizedTest
    @CsvSource({
        "end.form, single_37, cone_angle",
        "end.form, convex, convex_seat",
        "end.form, iso_double, iso_and_sae",
        "end.form, single_45, single_45",
        "end.port_thread, m10x1, thread_near",
        "end.port_thread, m14x1_5, thread"
    })
    void aWrongPairIsAStop(String key, String value, String variant) {
        Finding finding = only(RULE, Plumbed.car().with(Plumbed.TUBE + key, value));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo(variant);
        assertThat(finding.subject()).isEqualTo("front tube at caliper");
        assertThat(finding.inputs()).containsExactly("plumbing.tubes[0].end");
    }

    /** 3/16 in by 0.028 in is the thickest wall that SAE J533 double-flares (secondary source). */
    @ParameterizedTest
    @CsvSource({"0.71 mm, FINE", "0.89 mm, CAUTION"})
    void aThickWallIsACaution(String wall, State state) {
        assertThat(Plumbed.car().with(Plumbed.TUBE + "wall", wall).judgedBy(RULE))
                .extracting(Finding::state)
                .containsOnly(state);
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
