package org.brakewright.analysis.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.brakewright.analysis.lines.LinesState.AirKind;
import org.brakewright.analysis.lines.LinesState.BleedStep;
import org.brakewright.analysis.lines.LinesState.PartState;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.Nearness;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Shape;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.junit.jupiter.api.Test;

/** Lines of a few tubes, by hand. */
class LinesTest {
    /** Row G2 of the check values, in m: three edges of a cube, R 20 mm; straights 80, 60, 80 and length 282.83185 mm. */
    private static final List<Spot> CUBE =
            List.of(new Spot(0, 0, 0), new Spot(0.1, 0, 0), new Spot(0.1, 0.1, 0), new Spot(0.1, 0.1, 0.1));

    private static Plumbed cube() {
        return new Plumbed()
                .part("master", PartKind.MASTER, Circuit.FRONT, new Spot(0, 0, 0), false)
                .part("caliper", PartKind.CALIPER, null, new Spot(0.1, 0.1, 0.1), true)
                .tube("tube", "master", "caliper", CUBE);
    }

    private static TubeState tube(ResolvedLines lines) {
        return new TubeStates(lines).state(lines.tubes().getFirst(), Circuit.FRONT, 10e6);
    }

    /** The first mark stands 80 mm and a flare of 2 mm from the cut end; 90 degrees take 90/0.97 on the scale. */
    @Test
    void bendsAsTheKernelDoes() {
        TubeState tube = tube(cube().lines());
        assertThat(tube.developedM()).isCloseTo(0.28283185, within(1e-8));
        assertThat(tube.cutM()).isCloseTo(0.28683185, within(1e-8));
        assertThat(tube.bends().getFirst().markM()).isCloseTo(0.082, within(1e-9));
        assertThat(Math.toDegrees(tube.bends().getFirst().setRad())).isCloseTo(90 / 0.97, within(1e-9));
        assertThat(Math.toDegrees(tube.bends().getLast().rotationRad())).isCloseTo(90, within(1e-9));
        assertThat(tube.straights()).isEmpty();
    }

    /** Barlow on 4.75 x 0.70 with 290 MPa: 86 MPa, as the table of tube strengths prints it. */
    @Test
    void burstsAsTabled() {
        assertThat(tube(cube().lines()).strength().burstPa()).isCloseTo(86e6, within(0.6e6));
    }

    /** A clip at 0.1 m leaves 0.18283 m to the far end. */
    @Test
    void longestWayBetweenClips() {
        TubeState.Clips clips = Objects.requireNonNull(tube(cube().lines()).clips());
        assertThat(clips.longestM()).isCloseTo(0.18283, within(1e-5));
    }

    /** A ball of 10 mm whose middle stands 50 mm under the first leg: 50 - 10 - 4.75/2 mm. */
    @Test
    void smallestGap() {
        Spot middle = new Spot(0.05, 0, -0.05);
        TubeState tube = tube(cube().near(new Obstacle("joint", Nearness.MOVING, Shape.SPHERE, middle, middle, 0.01))
                .lines());
        assertThat(tube.gaps().getFirst().gapM()).isCloseTo(0.04 - 4.75e-3 / 2, within(1e-9));
        assertThat(tube.gaps().getFirst().alongM()).isCloseTo(0.05, within(1e-6));
    }

    /** Over an axle: up 300, along, down 300 again; neither master nor bleeder is above, so air must go 300 mm down. */
    @Test
    void airStaysOverAnAxle() {
        ResolvedLines lines = new Plumbed()
                .part("master", PartKind.MASTER, Circuit.REAR, new Spot(0, 0, 0), false)
                .part("caliper", PartKind.CALIPER, null, new Spot(0.5, 0, 0), true)
                .tube(
                        "loop",
                        "master",
                        "caliper",
                        List.of(new Spot(0, 0, 0), new Spot(0, 0, 0.3), new Spot(0.5, 0, 0.3), new Spot(0.5, 0, 0)))
                .lines();
        assertThat(AirTraps.of(lines, 0.01)).singleElement().satisfies(trap -> {
            assertThat(trap.kind()).isEqualTo(AirKind.HIGH_POINT);
            assertThat(trap.riseM()).isCloseTo(0.3, within(1e-12));
        });
    }

    /** A switch on a tee, 100 mm above the line, without a bleeder. */
    @Test
    void airStaysInAClosedEnd() {
        ResolvedLines lines = cube().part("switch", PartKind.SWITCH, null, new Spot(0.1, 0.1, 0.2), false)
                .tube("stub", "caliper", "switch", List.of(new Spot(0.1, 0.1, 0.1), new Spot(0.1, 0.1, 0.2)))
                .lines();
        assertThat(AirTraps.of(lines, 0.01)).singleElement().satisfies(trap -> {
            assertThat(trap.kind()).isEqualTo(AirKind.CLOSED_END);
            assertThat(trap.where()).isEqualTo("switch");
            assertThat(trap.riseM()).isCloseTo(0.1, within(1e-12));
        });
    }

    /** A line that only rises from the master to its bleeder keeps no air. */
    @Test
    void airLeavesARisingLine() {
        assertThat(AirTraps.of(cube().lines(), 0.01)).isEmpty();
    }

    /** Longest way first, one of each circuit together with a bar, the clutch by itself: common practice, no source. */
    @Test
    void bleedsFarFirst() {
        List<PartState> parts = List.of(
                part("left front", Circuit.FRONT, 1),
                part("right front", Circuit.FRONT, 2),
                part("left rear", Circuit.REAR, 3),
                part("slave", Circuit.CLUTCH, 9));
        assertThat(BleedOrder.of(parts, true))
                .extracting(BleedStep::bleeders)
                .containsExactly(
                        List.of("left rear", "right front"), List.of("left rear", "left front"), List.of("slave"));
        assertThat(BleedOrder.of(parts, false))
                .extracting(step -> step.bleeders().getFirst())
                .containsExactly("left rear", "right front", "left front", "slave");
    }

    private static PartState part(String name, Circuit circuit, double way) {
        return new PartState(name, PartKind.CALIPER, circuit, way, new Spot(0, 0, 0), true);
    }
}
