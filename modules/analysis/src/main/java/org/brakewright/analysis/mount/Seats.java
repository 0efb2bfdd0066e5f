package org.brakewright.analysis.mount;

import java.util.List;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.mesh.Triangle;
import org.brakewright.model.resolved.ResolvedMount.Hole;
import org.brakewright.model.resolved.ResolvedMount.Spot;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** What bolts sit in. */
final class Seats {
    private final Structure structure;
    private final PanelMesh mesh;
    private final PanelSheets sheets;

    Seats(Structure structure, PanelMesh mesh) {
        this.structure = structure;
        this.mesh = mesh;
        this.sheets = new PanelSheets(structure, mesh);
    }

    /**
     * Sheet round a bolt.
     *
     * @param thickness of all sheets, m
     * @param yield of the softest, Pa
     * @param edge from the bolt to the nearest edge of panel or hole, m
     */
    record Seat(double thickness, double yield, double edge) {}

    Seat at(String path, Spot spot) {
        int node = mesh.point(path);
        Triangle under = mesh.triangles().stream()
                .filter(triangle -> triangle.a() == node || triangle.b() == node || triangle.c() == node)
                .findFirst()
                .orElseThrow();
        return new Seat(sheets.thickness(under), sheets.yieldStress(under), edge(spot));
    }

    private double edge(Spot spot) {
        List<Spot> outline = structure.panel().outline();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            least = Math.min(least, distance(spot, outline.get(i), outline.get((i + 1) % outline.size())));
        }
        for (Hole hole : structure.panel().holes()) {
            double middle = Math.hypot(
                    spot.across() - hole.middle().across(),
                    spot.up() - hole.middle().up());
            least = Math.min(least, middle - hole.diameter() / 2);
        }
        return least;
    }

    private static double distance(Spot spot, Spot from, Spot to) {
        double x = to.across() - from.across();
        double y = to.up() - from.up();
        double share = ((spot.across() - from.across()) * x + (spot.up() - from.up()) * y) / (x * x + y * y);
        double on = Math.clamp(share, 0, 1);
        return Math.hypot(spot.across() - from.across() - on * x, spot.up() - from.up() - on * y);
    }
}
