package org.brakewright.sheets.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.brakewright.sheets.Sheet;
import org.junit.jupiter.api.Test;

/** The example's firewall; every number is one of its build file. */
class PanelSheetTest {
    private static final String CAR = Examples.text("hill-climber");

    @Test
    void holesLieWhereTheFilePutsThemSeenFromTheDriver() {
        List<Circle> circles = Drawn.of(Examples.sheet(CAR, "firewall")).circles();
        circle(circles, 0, 130, 50);
        circle(circles, 30, 0, 30);
        circle(circles, -30, 0, 30);
        // Bolts of 8 mm, and the half millimetre of a clearance hole, common practice; left of the car is left.
        circle(circles, 75, -50, 8.5);
        circle(circles, -75, -50, 8.5);
        circle(circles, -75, 50, 8.5);
        circle(circles, 75, 50, 8.5);
        assertThat(circles).hasSize(7);
    }

    private static void circle(List<Circle> circles, double x, double y, double diameter) {
        assertThat(circles).anySatisfy(circle -> {
            assertThat(circle.centre().x()).isCloseTo(x, within(1e-9));
            assertThat(circle.centre().y()).isCloseTo(y, within(1e-9));
            assertThat(2 * circle.radius()).isCloseTo(diameter, within(1e-9));
        });
    }

    @Test
    void theOutlineIsThatOfThePanelMirrored() {
        Polyline outline = Drawn.of(Examples.sheet(CAR, "firewall")).polylines().stream()
                .filter(line -> line.stroke().equals(Stroke.OUTLINE))
                .findFirst()
                .orElseThrow();
        var room = Extent.of(List.of(outline));
        assertThat(List.of(room.minX(), room.maxX(), room.minY(), room.maxY()))
                .containsExactly(-240.0, 280.0, -300.0, 200.0);
    }

    @Test
    void aDoublerHasTheHolesThatGoThroughItAndNoOthers() {
        assertThat(Drawn.of(Examples.sheet(CAR, "doubler-1")).circles()).hasSize(6);
        assertThat(Drawn.of(Examples.sheet(CAR, "patch-1")).circles()).isEmpty();
    }

    /** A mount that moves too far is a stop, and stops what is cut for it. */
    @Test
    void aMountThatMayNotBeDrivenIsStamped() {
        String weak = CAR.replaceFirst("(?s)  stringers:.*?\n(?=  arm:)", "");
        assertThat(Examples.sheet(CAR, "firewall").drawings()).allMatch(drawing -> drawing.stamp() == null);
        Sheet sheet = Examples.sheet(weak, "firewall");
        assertThat(sheet.drawings())
                .allSatisfy(drawing -> assertThat(drawing.stamp()).contains("DO NOT CUT"));
    }

    @Test
    void carsWithoutAMountHaveNoSuchSheets() {
        assertThat(Examples.sheets(Examples.text("shop-pickup")))
                .extracting(Sheet::key)
                .doesNotContain("firewall", "mount-bars", "push-and-measure", "footwell-plan");
    }
}
