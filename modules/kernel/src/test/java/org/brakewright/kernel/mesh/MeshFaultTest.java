package org.brakewright.kernel.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Every kind of fault in a plan is a value that names what it concerns; several come at once. */
class MeshFaultTest {
    private static final Ring SQUARE = Ring.rectangle("square", new Spot(0, 0), new Spot(1, 1));

    private static List<String> faults(PanelPlan plan) {
        return faults(plan, Fineness.even(0.5));
    }

    private static List<String> faults(PanelPlan plan, Fineness fineness) {
        return ((MeshOutcome.Refused) Mesher.mesh(plan, fineness))
                .faults().stream()
                        .map(fault -> (fault.kind() + " " + fault.name() + " " + fault.other()).strip())
                        .toList();
    }

    private static Ring box(String name, double x, double y, double size) {
        return Ring.rectangle(name, new Spot(x, y), new Spot(x + size, y + size));
    }

    @Test
    void rings() {
        Ring open = new Ring("open", List.of(new Spot(0, 0), new Spot(1, 0), new Spot(0, 0)));
        assertThat(faults(PanelPlan.bare(open))).containsExactly("RING_OPEN open");
        Ring bow = new Ring("bow", List.of(new Spot(0, 0), new Spot(1, 1), new Spot(1, 0), new Spot(0, 1)));
        assertThat(faults(PanelPlan.bare(bow))).containsExactly("RING_CROSSES_ITSELF bow");
        Ring twice = new Ring(
                "twice", List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 1e-7), new Spot(1, 1), new Spot(0, 1)));
        assertThat(faults(PanelPlan.bare(twice))).containsExactly("TOO_SHORT twice");
    }

    @Test
    void holes() {
        List<Ring> holes = List.of(
                box("first", 0.1, 0.1, 0.2),
                box("second", 0.25, 0.2, 0.2),
                box("away", 2, 2, 0.1),
                box("touching", 0.5, 0, 0.1),
                box("over the edge", 0.95, 0.5, 0.1));
        assertThat(faults(new PanelPlan(SQUARE, holes, List.of(), List.of(), List.of())))
                .containsExactly(
                        "HOLES_OVERLAP second first",
                        "HOLE_OUTSIDE away",
                        "HOLE_OUTSIDE touching",
                        "HOLE_OUTSIDE over the edge");
    }

    @Test
    void pointsLinesAndRegions() {
        List<Ring> holes = List.of(box("hole", 0.4, 0.4, 0.2));
        List<MustPoint> points = List.of(
                new MustPoint("out", new Spot(1.1, 0.5)),
                new MustPoint("fallen", new Spot(0.5, 0.5)),
                new MustPoint("on the hole's edge", new Spot(0.4, 0.5)),
                new MustPoint("on the rim", new Spot(0.3, 1)));
        List<MustLine> lines = List.of(
                new MustLine("leaving", new Spot(0.1, 0.1), new Spot(0.1, 1.2)),
                new MustLine("bridging", new Spot(0.1, 0.5), new Spot(0.9, 0.5)),
                new MustLine("along the hole", new Spot(0.4, 0.1), new Spot(0.4, 0.9)));
        assertThat(faults(new PanelPlan(SQUARE, holes, points, lines, List.of(box("doubler", 0.7, 0.7, 0.5)))))
                .containsExactly(
                        "REGION_OUTSIDE doubler",
                        "POINT_OUTSIDE out",
                        "POINT_IN_HOLE fallen hole",
                        "LINE_OUTSIDE leaving",
                        "LINE_CROSSES_HOLE bridging hole");
    }

    @Test
    void names() {
        List<MustLine> lines = List.of(new MustLine("square", new Spot(0.1, 0.1), new Spot(0.1, 0.1)));
        assertThat(faults(new PanelPlan(SQUARE, List.of(), List.of(), lines, List.of())))
                .containsExactly("NAME_TWICE square", "TOO_SHORT square");
    }

    @Test
    void tooFine() {
        assertThat(faults(PanelPlan.bare(SQUARE), Fineness.even(1e-3))).containsExactly("TOO_FINE square");
    }

    @Test
    void valuesThatNoPanelCanHave() {
        assertThatThrownBy(() -> new Spot(Double.NaN, 0)).hasMessageContaining("x must be finite");
        assertThatThrownBy(() -> Fineness.even(0)).hasMessageContaining("coarse must be finite and above zero");
        assertThatThrownBy(() -> Focus.at(new Spot(0, 0), -1)).hasMessageContaining("size");
        assertThatThrownBy(() -> Ring.circle("c", new Spot(0, 0), 1, 2)).hasMessageContaining("corners");
    }
}
