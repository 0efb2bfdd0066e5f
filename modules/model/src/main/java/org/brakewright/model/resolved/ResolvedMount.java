package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.mount.BoltClass;
import org.brakewright.model.mount.EdgeHold;
import org.brakewright.model.mount.EndJoint;
import org.brakewright.model.mount.Family;
import org.brakewright.model.mount.Side;

/**
 * What carries the pedal, in SI. Places are in the car's axes (x forward, y left, z up) from the zero on the panel.
 *
 * @param structure all that gives way but the pedal itself
 * @param pedal the brake pedal's points and arm
 * @param loads what is asked of it
 * @param placeInCar of the zero on the panel, from the zero of lines and footwell; empty when not told
 * @param measured a push on the car; empty when nobody has pushed
 */
public record ResolvedMount(
        Structure structure, PedalPoints pedal, Loads loads, Optional<Place> placeInCar, Optional<Measured> measured) {

    /**
     * A push that was measured.
     *
     * @param force on the pad, N
     * @param pad its movement, m
     * @param flange movement of the masters, m; empty when not read
     */
    public record Measured(double force, double pad, OptionalDouble flange) {}

    /**
     * All that is fixed to the body.
     *
     * @param plates patches and doublers
     * @param brackets one or two
     * @param pivot middle of the pedal's bearing
     */
    public record Structure(
            Panel panel,
            List<Plate> plates,
            List<Bracket> brackets,
            List<Stringer> stringers,
            Optional<CrossTube> crossTube,
            Place pivot) {
        public Structure {
            plates = List.copyOf(plates);
            brackets = List.copyOf(brackets);
            stringers = List.copyOf(stringers);
        }
    }

    /**
     * A place.
     *
     * @param x forward, m
     * @param y left, m
     * @param z up, m
     */
    public record Place(double x, double y, double z) {}

    /** A point of the panel's plane, m. */
    public record Spot(double across, double up) {}

    /**
     * What a part is made of.
     *
     * @param young Pa
     * @param poisson ratio
     * @param density kg/m3
     * @param yieldStress Pa
     * @param tensileStrength Pa
     * @param source of the data
     */
    public record Material(
            String name,
            Family family,
            double young,
            double poisson,
            double density,
            double yieldStress,
            double tensileStrength,
            String source) {}

    /**
     * The panel.
     *
     * @param thickness m
     * @param edges one a side
     * @param edgeStiffness of a whole sprung side, N/m; 0 when no side is sprung
     * @param rake from plumb, top forward, rad
     */
    public record Panel(
            List<Spot> outline,
            double thickness,
            Material material,
            List<EdgeHold> edges,
            double edgeStiffness,
            double rake,
            List<Hole> holes) {
        public Panel {
            outline = List.copyOf(outline);
            edges = List.copyOf(edges);
            holes = List.copyOf(holes);
        }
    }

    /** A round hole; m. */
    public record Hole(Spot middle, double diameter) {}

    /**
     * A patch or doubler.
     *
     * @param path in the build file
     * @param thickness m
     */
    public record Plate(String path, String name, List<Spot> outline, double thickness, Material material, Lay lay) {
        public Plate {
            outline = List.copyOf(outline);
        }
    }

    /** How a plate meets the panel. */
    public enum Lay {
        /** In its place. */
        REPLACES,
        /** On it, both bending as one sheet. */
        AS_ONE,
        /** On it, both bending side by side. */
        SIDE_BY_SIDE
    }

    /**
     * A stiff body on the panel.
     *
     * @param pivot whether it carries the pivot
     * @param masters whether it carries the masters
     */
    public record Bracket(
            String name, boolean pivot, boolean masters, Side side, Optional<Bolts> bolts, List<Weld> welds) {
        public Bracket {
            welds = List.copyOf(welds);
        }
    }

    /**
     * Bolts of one size.
     *
     * @param screw its diameter and pitch
     * @param hole m
     * @param washer m
     * @param clamped m
     * @param engagement m
     * @param torque N m; empty when not told
     * @param foot of the bracket; empty when not told, and then prying is not known
     */
    public record Bolts(
            Screw screw,
            BoltClass grade,
            List<Spot> positions,
            double hole,
            double washer,
            double clamped,
            double engagement,
            Optional<Double> torque,
            Optional<Foot> foot) {
        public Bolts {
            positions = List.copyOf(positions);
        }
    }

    /** Diameter and pitch, m. */
    public record Screw(double diameter, double pitch) {}

    /** Lengths of a bracket's foot, m. */
    public record Foot(double rootToBolt, double boltToEdge) {}

    /** A fillet; leg in m. */
    public record Weld(Spot from, Spot to, double leg) {}

    /**
     * A cross-section by its dimensions, m.
     *
     * @param width diameter of round ones
     * @param height the diameter or width where there is one dimension
     * @param wall 0 when solid
     */
    public record Profile(Shape shape, double width, double height, double wall) {}

    /** Shapes of sections. */
    public enum Shape {
        ROUND_TUBE,
        ROUND_BAR,
        RECTANGULAR_TUBE,
        FLAT_BAR,
        ANGLE,
        CHANNEL
    }

    /**
     * A bar to the body.
     *
     * @param near its end on panel or bracket
     */
    public record Stringer(
            String name,
            Profile profile,
            Material material,
            Near near,
            Place body,
            EndJoint nearEnd,
            EndJoint bodyEnd) {}

    /** Where a bar begins. */
    public sealed interface Near {
        /** On the panel; diameter of its foot in m. */
        record OnPanel(Spot spot, double foot) implements Near {}

        /** On a bracket. */
        record OnBracket(String bracket, Place at) implements Near {}
    }

    /** A tube across the car, joined to a bracket. */
    public record CrossTube(
            Profile profile, Material material, Place right, Place left, EndJoint ends, String bracket) {}

    /**
     * A pedal at rest.
     *
     * @param pad its centre
     * @param pin of the pushrod, or bearing of the balance bar
     * @param socket far end of the rod
     * @param profile of its arm
     */
    public record PedalPoints(Place pivot, Place pad, Place pin, Place socket, Profile profile, Material material) {}

    /**
     * What is asked.
     *
     * @param function foot force in use, N
     * @param stiffness foot force without lasting set, N
     * @param strength foot force in an emergency, N
     * @param sideways share of the foot force
     * @param stops in its life
     * @param stopForce everyday foot force, N
     * @param survival chance that no crack starts
     */
    public record Loads(
            double function,
            double stiffness,
            double strength,
            double sideways,
            double stops,
            double stopForce,
            double survival) {}
}
