package org.brakewright.model.resolved;

import java.util.List;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.Nearness;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.lines.TubeMaterial;
import org.jspecify.annotations.Nullable;

/**
 * Where the lines run, in SI.
 *
 * @param bender what bends them
 * @param stocks lengths sold, m
 * @param sawCut what each cut loses, m
 * @param flareAllowance what a flare takes up, m
 * @param nutStraight what nut and clamp need behind a flare, m
 */
public record ResolvedLines(
        Bender bender,
        List<Double> stocks,
        double sawCut,
        double flareAllowance,
        double nutStraight,
        List<Part> parts,
        List<Tube> tubes,
        List<Hose> hoses,
        List<Obstacle> obstacles) {
    public ResolvedLines {
        stocks = List.copyOf(stocks);
        parts = List.copyOf(parts);
        tubes = List.copyOf(tubes);
        hoses = List.copyOf(hoses);
        obstacles = List.copyOf(obstacles);
    }

    /**
     * A point.
     *
     * @param x forward, m
     * @param y left, m
     * @param z up, m
     */
    public record Spot(double x, double y, double z) {
        /** Way (m) to another. */
        public double to(Spot other) {
            return Math.hypot(Math.hypot(x - other.x, y - other.y), z - other.z);
        }
    }

    /**
     * The tool.
     *
     * @param radius to the middle of the tube, m
     * @param firstGrip m
     * @param between m
     * @param lastGrip m
     */
    public record Bender(double radius, double firstGrip, double between, double lastGrip) {}

    /**
     * What lines are joined to.
     *
     * @param circuit of a master; null for the others
     */
    public record Part(String name, PartKind kind, @Nullable Circuit circuit, Spot at, boolean bleeder) {}

    /**
     * A tube.
     *
     * @param outsideDiameter m
     * @param wall m
     * @param points ends and corners
     * @param radii of its bends, m
     * @param clips from its start, m, rising
     * @param clipped whether clips were told
     * @param angleKept share of a bent angle that is left
     */
    public record Tube(
            String name,
            TubeMaterial material,
            double outsideDiameter,
            double wall,
            LineEnd start,
            LineEnd end,
            List<Spot> points,
            List<Double> radii,
            List<Double> clips,
            boolean clipped,
            double angleKept) {
        public Tube {
            points = List.copyOf(points);
            radii = List.copyOf(radii);
            clips = clips.stream().sorted().toList();
        }
    }

    /**
     * A hose.
     *
     * @param length free, m
     */
    public record Hose(String name, double length, LineEnd start, LineEnd end) {}

    /**
     * What lines keep clear of.
     *
     * @param shape cylinder, box or ball
     * @param from one end of the axis, one corner, or the middle
     * @param to the other end or corner, or the middle again
     * @param radius m; 0 for a box
     */
    public record Obstacle(String name, Nearness near, Shape shape, Spot from, Spot to, double radius) {}

    /** Shapes of envelopes. */
    public enum Shape {
        CYLINDER,
        BOX,
        SPHERE
    }
}
