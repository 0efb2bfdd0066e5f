package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.mount.MountShape.BulgePoint;
import org.brakewright.kernel.mesh.Spot;
import org.brakewright.kernel.mesh.Triangle;

/** How far the panel is moved along a line up through the pivot. */
final class Bulge {
    private static final int STATIONS = 41;

    private final LoadedMount loaded;
    private final List<Spot> spots;

    private Bulge(LoadedMount loaded) {
        this.loaded = loaded;
        this.spots = loaded.mesh().nodes();
    }

    /** From below; where the line lies in a hole there is no point. Foot in N. */
    static List<BulgePoint> of(LoadedMount loaded, double foot) {
        Bulge bulge = new Bulge(loaded);
        double least = bulge.spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double most = bulge.spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        double across = loaded.mount().structure().pivot().y();
        List<BulgePoint> points = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            double up = least + (most - least) * i / (STATIONS - 1);
            bulge.at(new Spot(across, up)).ifPresent(moved -> points.add(new BulgePoint(up, foot * moved)));
        }
        return List.copyOf(points);
    }

    private OptionalDouble at(Spot spot) {
        for (Triangle triangle : loaded.mesh().triangles()) {
            double a = area(spot, triangle.b(), triangle.c());
            double b = area(spot, triangle.c(), triangle.a());
            double c = area(spot, triangle.a(), triangle.b());
            double whole = a + b + c;
            if (Math.min(a, Math.min(b, c)) >= -1e-9 * whole) {
                return OptionalDouble.of(
                        (a * moved(triangle.a()) + b * moved(triangle.b()) + c * moved(triangle.c())) / whole);
            }
        }
        return OptionalDouble.empty();
    }

    /** Twice the area of the triangle of a point and two nodes, turning left. */
    private double area(Spot at, int from, int to) {
        Spot a = spots.get(from);
        Spot b = spots.get(to);
        return (a.x() - at.x()) * (b.y() - at.y()) - (a.y() - at.y()) * (b.x() - at.x());
    }

    private double moved(int node) {
        return loaded.straight().motion(node).shift().dot(loaded.model().frame().normal());
    }
}
