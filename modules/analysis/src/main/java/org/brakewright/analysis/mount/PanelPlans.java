package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.kernel.mesh.Fineness;
import org.brakewright.kernel.mesh.Focus;
import org.brakewright.kernel.mesh.MustLine;
import org.brakewright.kernel.mesh.MustPoint;
import org.brakewright.kernel.mesh.PanelPlan;
import org.brakewright.kernel.mesh.Ring;
import org.brakewright.kernel.mesh.Spot;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Hole;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.Panel;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;
import org.brakewright.model.resolved.ResolvedMount.Weld;

/**
 * The panel as a plan for the mesher. Rings, points and lines carry their key paths as names, so that a fault names the
 * key; what stands for a washer or a foot has {@link #DISC} behind its path.
 */
public final class PanelPlans {
    /** Path of the panel's outline, and name of its ring. */
    public static final String OUTLINE = "mount.panel.outline";

    /** Behind the path of a bolt or a stringer's end: the field under its washer or foot. */
    public static final String DISC = "#disc";

    private static final int HOLE_CORNERS = 12;
    private static final int DISC_CORNERS = 8;

    /** Edges this many times shorter than the panel's size are the coarsest. */
    private static final double COARSE = 7;

    /** Edges round a disc over its diameter. */
    private static final double AT_DISC = 0.4;

    private static final double GROWTH = 0.45;

    private final List<MustPoint> points = new ArrayList<>();
    private final List<MustLine> lines = new ArrayList<>();
    private final List<Ring> regions = new ArrayList<>();
    private final List<Focus> focuses = new ArrayList<>();

    private PanelPlans() {}

    /** The plan of a structure's panel. */
    public static PanelPlan plan(Structure structure) {
        PanelPlans plans = of(structure);
        return new PanelPlan(
                new Ring(OUTLINE, spots(structure.panel().outline())),
                holes(structure.panel()),
                plans.points,
                plans.lines,
                plans.regions);
    }

    /**
     * How fine it is to be cut.
     *
     * @param factor 1 for the coarsest, less for finer
     */
    static Fineness fineness(Structure structure, double factor) {
        List<Focus> focuses = of(structure).focuses.stream()
                .map(focus -> new Focus(focus.from(), focus.to(), factor * focus.size()))
                .toList();
        return new Fineness(factor * span(structure.panel()) / COARSE, GROWTH, focuses);
    }

    private static PanelPlans of(Structure structure) {
        PanelPlans plans = new PanelPlans();
        for (Plate plate : structure.plates()) {
            plans.regions.add(new Ring(plate.path(), spots(plate.outline())));
        }
        for (int i = 0; i < structure.brackets().size(); i++) {
            plans.seat(structure.brackets().get(i), bracketPath(i));
        }
        for (int i = 0; i < structure.stringers().size(); i++) {
            if (structure.stringers().get(i).near() instanceof Near.OnPanel(var spot, double foot)) {
                plans.disc(stringerPath(i), spot, foot);
            }
        }
        return plans;
    }

    private void seat(Bracket bracket, String path) {
        bracket.bolts().ifPresent(bolts -> bolts(bolts, path));
        for (int i = 0; i < bracket.welds().size(); i++) {
            Weld weld = bracket.welds().get(i);
            MustLine line = new MustLine(weldPath(path, i), spot(weld.from()), spot(weld.to()));
            lines.add(line);
            focuses.add(new Focus(line.from(), line.to(), Math.max(line.length() / 4, weld.leg())));
        }
    }

    private void bolts(Bolts bolts, String path) {
        for (int i = 0; i < bolts.positions().size(); i++) {
            disc(boltPath(path, i), bolts.positions().get(i), bolts.washer());
        }
    }

    private void disc(String path, ResolvedMount.Spot spot, double diameter) {
        points.add(new MustPoint(path, spot(spot)));
        regions.add(Ring.circle(path + DISC, spot(spot), diameter, DISC_CORNERS));
        focuses.add(Focus.at(spot(spot), AT_DISC * diameter));
    }

    static String bracketPath(int index) {
        return "mount.brackets[" + index + "]";
    }

    static String boltPath(String bracket, int index) {
        return bracket + ".bolts.positions[" + index + "]";
    }

    static String weldPath(String bracket, int index) {
        return bracket + ".welds[" + index + "]";
    }

    static String stringerPath(int index) {
        return "mount.stringers[" + index + "].on_panel";
    }

    private static List<Ring> holes(Panel panel) {
        List<Ring> rings = new ArrayList<>();
        for (Hole hole : panel.holes()) {
            String path = "mount.panel.holes[" + rings.size() + "]";
            rings.add(Ring.circle(path, spot(hole.middle()), hole.diameter(), HOLE_CORNERS));
        }
        return rings;
    }

    /** The diagonal of the panel over the root of two: the side of a square one. */
    private static double span(Panel panel) {
        double across = extent(
                panel.outline().stream().mapToDouble(ResolvedMount.Spot::across).toArray());
        double up = extent(
                panel.outline().stream().mapToDouble(ResolvedMount.Spot::up).toArray());
        return Math.hypot(across, up) / Math.sqrt(2);
    }

    private static double extent(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }

    static Spot spot(ResolvedMount.Spot spot) {
        return new Spot(spot.across(), spot.up());
    }

    private static List<Spot> spots(List<ResolvedMount.Spot> spots) {
        return spots.stream().map(PanelPlans::spot).toList();
    }
}
