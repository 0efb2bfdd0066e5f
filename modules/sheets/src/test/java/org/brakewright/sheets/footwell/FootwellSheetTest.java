package org.brakewright.sheets.footwell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.junit.jupiter.api.Test;

/** The example's pedals; every number is one of its build file. */
class FootwellSheetTest {
    private static final String CAR = Examples.text("hill-climber");

    @Test
    void padsStandWhereTheFilePutsThemSeenFromTheDriver() {
        List<Bounds> pads = outlines("footwell-front");
        // The brake hangs 10 mm to the right of the mount's zero at 320 mm; the throttle leans, so it looks lower than
        // it is.
        pad(pads, -425, 286, 60, 60);
        pad(pads, -310, 286, 60, 60);
        assertThat(pads).anySatisfy(pad -> {
            assertThat(pad.middle().x()).isCloseTo(-225, within(1e-9));
            assertThat(pad.middle().y()).isCloseTo(275, within(1e-9));
            assertThat(pad.width()).isCloseTo(40, within(1e-9));
            // 90 mm along an arm of 30 mm over 225 mm, and 6 mm of thickness across it.
            double arm = Math.hypot(30, 225);
            assertThat(pad.height()).isCloseTo(90 * 225 / arm + 6 * 30 / arm, within(1e-9));
        });
    }

    @Test
    void fromAboveAndFromTheLeftTheyStandTheSame() {
        pad(outlines("footwell-plan"), -425, -170, 60, 6);
        pad(outlines("footwell-side"), -170, 286, 6, 60);
    }

    private static void pad(List<Bounds> pads, double x, double y, double width, double height) {
        assertThat(pads).anySatisfy(pad -> {
            assertThat(pad.middle().x()).isCloseTo(x, within(1e-6));
            assertThat(pad.middle().y()).isCloseTo(y, within(1e-6));
            assertThat(pad.width()).isCloseTo(width, within(1e-6));
            assertThat(pad.height()).isCloseTo(height, within(1e-6));
        });
    }

    private static List<Bounds> outlines(String sheet) {
        return Drawn.of(Examples.sheet(CAR, sheet)).polylines().stream()
                .filter(line -> line.stroke().equals(Stroke.OUTLINE))
                .map((Polyline line) -> Extent.of(List.of(line)))
                .toList();
    }
}
