package org.brakewright.kernel.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.mesh.MeshOutcome.Meshed;
import org.junit.jupiter.api.Test;

/** The worked example of docs/laws/panel-mesh.md. */
class LawPagesTest {
    @Test
    void panelMesh() {
        WorkedExample page = WorkedExample.of("panel-mesh");
        Spot center = new Spot(0, 0);
        Ring hole = Ring.circle("hole", center, page.si("hole diameter"), (int) page.si("hole corners"));
        PanelPlan plan = new PanelPlan(
                box("panel", page.si("panel width"), page.si("panel height")),
                List.of(hole),
                List.of(),
                List.of(),
                List.of(box("doubler", page.si("doubler width"), page.si("doubler height"))));
        Fineness fineness =
                new Fineness(page.si("coarse length"), 0.3, List.of(Focus.at(center, page.si("length at the hole"))));
        PanelMesh mesh = ((Meshed) Mesher.mesh(plan, fineness)).mesh();
        page.holds("area of the panel", mesh.area());
        page.holds(
                "area under the doubler",
                mesh.triangles().stream()
                        .filter(triangle -> triangle.regions().contains("doubler"))
                        .mapToDouble(mesh::area)
                        .sum());
        assertThat(mesh.quality().smallestAngle()).isGreaterThanOrEqualTo(page.si("least angle"));
        assertThat(page.si("least angle")).isEqualTo(Mesher.SMALLEST_ANGLE);
    }

    private static Ring box(String name, double width, double height) {
        return Ring.rectangle(name, new Spot(-width / 2, -height / 2), new Spot(width / 2, height / 2));
    }
}
