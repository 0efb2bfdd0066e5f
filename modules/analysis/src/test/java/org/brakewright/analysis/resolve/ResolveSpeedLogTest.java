package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.brakewright.model.Given;
import org.brakewright.model.Origin;
import org.brakewright.model.Problem;
import org.brakewright.model.heat.Recording;
import org.brakewright.model.heat.Recording.Sample;
import org.brakewright.model.heat.SpeedLog;
import org.brakewright.model.heat.SpeedPoint;
import org.brakewright.model.resolved.ResolvedSchedule.Leg;
import org.brakewright.quantity.Quantity;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A recorded log is driven as the same log written by hand. */
class ResolveSpeedLogTest {
    private static final String PATH = "heat.schedules[0]";

    /** Braked from 30 to 10 m/s in 4 s, then held: three bends, whatever lies between them. */
    private static final List<Sample> DRIVE =
            List.of(new Sample(7, 30), new Sample(8, 25), new Sample(10, 15), new Sample(11, 10), new Sample(14, 10));

    private static final List<Leg> LEGS = List.of(new Leg(4, 30, 10, 0), new Leg(3, 10, 10, 0));

    @Test
    void keepsTheBends() {
        Values values = new Values(Map.of());
        assertThat(legs(values, recorded(DRIVE, null))).containsExactlyElementsOf(LEGS);
        assertThat(values.ledger()).singleElement().satisfies(noise -> {
            assertThat(noise.path()).isEqualTo(PATH + ".noise");
            assertThat(noise.low()).isLessThan(noise.value());
            assertThat(noise.high()).isGreaterThan(noise.value());
        });
    }

    @Test
    void drivesRecordedAndDrawnLogsAlike() {
        Given exact = given(0, Unit.METRE_PER_SECOND, ".noise");
        List<Leg> recorded = legs(new Values(Map.of()), recorded(DRIVE, exact));
        assertThat(recorded).containsExactlyElementsOf(legs(new Values(Map.of()), drawn(DRIVE, exact)));
        assertThat(recorded).containsExactlyElementsOf(LEGS);
    }

    @Test
    void takesDrawnPointsAsTheyAre() {
        Values values = new Values(Map.of());
        List<Sample> trembling = new ArrayList<>(DRIVE);
        trembling.set(1, new Sample(8, 25.1));
        assertThat(legs(values, drawn(trembling, null))).hasSize(4);
        assertThat(values.ledger()).isEmpty();
        assertThat(legs(values, drawn(trembling, given(0.2, Unit.METRE_PER_SECOND, ".noise"))))
                .containsExactlyElementsOf(LEGS);
    }

    @Test
    void refusesAFileThatNobodyRead() {
        Values values = new Values(Map.of());
        assertThat(legs(values, new SpeedLog("log", null, null, null, null))).isEmpty();
        assertThat(values.problems()).extracting(Problem::path).containsExactly(PATH);
    }

    @Test
    void aRecordingStandsInTheOrderOfTime() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Recording(DRIVE.subList(0, 1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Recording(DRIVE.reversed()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sample(1, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sample(Double.NaN, 1));
    }

    private static List<Leg> legs(Values values, SpeedLog log) {
        return new ResolveSpeedLog(values, log, PATH).legs();
    }

    private static SpeedLog recorded(List<Sample> samples, @Nullable Given noise) {
        return new SpeedLog("log", null, null, noise, new Recording(samples));
    }

    private static SpeedLog drawn(List<Sample> samples, @Nullable Given noise) {
        List<SpeedPoint> points = samples.stream()
                .map(sample -> new SpeedPoint(
                        given(sample.time(), Unit.SECOND, ".points[0].time"),
                        given(sample.speed(), Unit.METRE_PER_SECOND, ".points[0].speed")))
                .toList();
        return new SpeedLog("log", points, null, noise, null);
    }

    private static Given given(double si, Unit unit, String key) {
        return new Given(Quantity.of(si, unit), Origin.MEASURED, PATH + key);
    }
}
