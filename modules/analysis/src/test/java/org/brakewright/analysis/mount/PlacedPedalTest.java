package org.brakewright.analysis.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.junit.jupiter.api.Test;

/** A pedal of which only lengths are known, put on its mount; figures by trigonometry. */
class PlacedPedalTest {
    private static final WrittenCar LINKED = Mounts.BOX
            .without("pedal.mechanism")
            .with(
                    "pedal.linkage.pad_arm: 250 mm\npedal.linkage.pushrod_arm: 50 mm\npedal.linkage.pushrod_angle: 10 deg");

    @Test
    void aHungArmHangsPlumbWhenItsLeanIsNotTold() {
        PedalPoints points = points(LINKED);
        assertThat(points.pad().x()).isCloseTo(-0.060, within(1e-12));
        assertThat(points.pad().z()).isCloseTo(0.060 - 0.250, within(1e-12));
        assertThat(points.pin().z()).isCloseTo(0.060 - 0.050, within(1e-12));
        assertThat(points.socket().x()).isGreaterThan(points.pin().x());
    }

    @Test
    void aStandingArmStandsAndItsRodStillGoesForward() {
        PedalPoints points = points(LINKED.with("mount.arm.lean: 180 deg"));
        assertThat(points.pad().z()).isCloseTo(0.060 + 0.250, within(1e-12));
        assertThat(points.socket().x()).isGreaterThan(points.pin().x());
    }

    /** Pad arm over pushrod arm and the cosine of the rod's angle, whichever way the arm leans. */
    @Test
    void theDrawnRatioIsThatOfTheLengths() {
        double ratio = 250 / (50 * Math.cos(Math.toRadians(10)));
        for (String lean : new String[] {"-15 deg", "0 deg", "20 deg", "180 deg", "165 deg"}) {
            assertThat(MountStiffness.drawnRatio(points(LINKED.with("mount.arm.lean: " + lean))))
                    .as(lean)
                    .isCloseTo(ratio, within(1e-9));
        }
    }

    private static PedalPoints points(WrittenCar car) {
        return car.resolved().mount().orElseThrow().pedal();
    }
}
