package org.brakewright.sheets.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Vertex;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

/** The example's brace: 22 mm on 38 mm, 52 degrees, 4 mm off the axis. */
class SaddleSheetTest {
    private static final String CAR = Examples.text("hill-climber");
    private static final double BRANCH = 11;
    private static final double MAIN = 19;
    private static final double ANGLE = Math.toRadians(52);
    private static final double OFFSET = 4;

    /**
     * The drawn curve, wrapped back on the tube, lies on the tube it meets: geometry. The paper's own height along the tube
     * is free, so the first point fixes it.
     */
    @Test
    void wrappedBackTheCurveLiesOnTheOtherTube() {
        List<Point> paper = Drawn.of(Examples.sheet(CAR, "saddle-1")).polylines().getFirst().vertices().stream()
                .map(Vertex::at)
                .toList();
        List<Point> curve = paper.subList(0, paper.size() - 2);
        double left = curve.getFirst().x();
        double lift = height(0) - curve.getFirst().y();
        assertThat(curve).hasSizeGreaterThan(100).allSatisfy(point -> {
            double around = (point.x() - left) / BRANCH;
            double aside = BRANCH * Math.sin(around) - OFFSET;
            // along the branch and square to it, seen across the main tube
            double over = (point.y() + lift) * Math.sin(ANGLE) - BRANCH * Math.cos(around) * Math.cos(ANGLE);
            assertThat(Math.hypot(aside, over)).isCloseTo(MAIN, within(1e-6));
        });
        assertThat(curve.getLast().x() - left).isCloseTo(Math.PI * 2 * BRANCH, within(1e-9));
    }

    /** Where the tube's side at an angle (rad) meets the other one, solved for the height. */
    private static double height(double around) {
        double aside = BRANCH * Math.sin(around) - OFFSET;
        return (Math.sqrt(MAIN * MAIN - aside * aside) + BRANCH * Math.cos(around) * Math.cos(ANGLE)) / Math.sin(ANGLE);
    }

    @Test
    void thePaperGoesOnceRoundTheTube() {
        assertThat(Extent.of(List.of(Drawn.of(Examples.sheet(CAR, "saddle-1"))
                                .polylines()
                                .getFirst()))
                        .width())
                .isCloseTo(Math.PI * 22, within(1e-9));
    }

    @Test
    void aTubeThatMissesTheOtherIsRefused() {
        assertThat(Examples.problems(CAR.replace("offset: 4 mm}", "offset: 9 mm}")))
                .containsExactly("shop.joints[0].branch_diameter 22 mm");
        assertThat(Examples.problems(CAR.replace("branch_diameter: 22 mm", "branch_diameter: 40 mm")))
                .containsExactly("shop.joints[0].branch_diameter 40 mm");
    }
}
