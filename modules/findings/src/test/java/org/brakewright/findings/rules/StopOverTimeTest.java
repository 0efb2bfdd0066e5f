package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.findings.Judgement.figure;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.stop.Stops;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;

/** The numbers themselves are held by the tests of the stops. */
class StopOverTimeTest {
    private static final StopOverTime RULE = new StopOverTime();
    private static final TestCar CAR = TestCar.twin().with("stops.speed", "20 m/s");

    private static List<Finding> judged(TestCar car) {
        ResolvedBuild build = car.facts().build();
        Analysis analysis = Analyse.analyse(build);
        return RULE.judge(new Facts(build, analysis.with(Stops.of(build, analysis.hardStop()))));
    }

    /** One load case: hard stop, panic push on two grips, each circuit open. */
    @Test
    void isFineWhereBothNameTheSameWheels() {
        Finding finding = judged(CAR).getFirst();
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(figure("count", finding)).isEqualTo(5);
        assertThat(figure("same", finding) + figure("close", finding)).isEqualTo(5);
        assertThat(finding.variant()).isEqualTo(figure("close", finding) > 0 ? "close" : "");
        assertThat(figure("speed", finding)).isEqualTo(20);
    }

    /** By hand: less than 90/60 = 1.5 m/s2, which weak pads give, does not bring 90 m/s to rest within a minute. */
    @Test
    void cautionsWhereTheCarDoesNotComeToRest() {
        Finding finding = judged(CAR.with("stops.speed", "90 m/s")
                        .with("front.pad_friction", "0.06")
                        .with("rear.pad_friction", "0.06"))
                .getFirst();
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("no_rest");
    }

    @Test
    void isSilentWhereNoStopIsFollowed() {
        assertThat(judged(TestCar.twin())).isEmpty();
        assertThat(RULE.judge(CAR.facts())).isEmpty();
    }
}
