package org.brakewright.analysis.mount;

import java.util.List;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.jspecify.annotations.Nullable;

/**
 * What a foot on the brake pedal does to the mount. Everything grows evenly with the foot's force, so the force at
 * which a part reaches its limit says its margin. Places are from the zero on the panel.
 *
 * @param triangles of the mesh that was fine enough
 * @param meshChange movement changed by this share when the mesh was last made finer
 * @param loads how far it moves under each load asked for
 * @param parts sheets and bars
 * @param bolts every bolt
 * @param welds every weld on the panel
 * @param columns bars that are pressed
 * @param endurance everyday stops until a crack may start, shortest first
 * @param reactions what the body has to take
 * @param variants the same car with less on its panel
 * @param options what each addition gains, most for its mass first
 */
public record MountState(
        int triangles,
        double meshChange,
        List<LoadState> loads,
        List<PartState> parts,
        List<BoltState> bolts,
        List<WeldState> welds,
        List<ColumnState> columns,
        List<EnduranceState> endurance,
        List<ReactionState> reactions,
        List<VariantState> variants,
        List<OptionState> options) {
    /** Stands for a force that no foot reaches, N. */
    public static final double NO_FOOT_N = 1e9;

    /** What a load is for. */
    public enum Asked {
        /** In use. */
        FUNCTION,
        /** Without lasting set. */
        STIFFNESS,
        /** In an emergency. */
        STRENGTH
    }

    /**
     * A load.
     *
     * @param asked what it is for
     * @param footN force of the foot
     * @param padM movement of the pad along the foot with the fluid held fast: travel that is lost
     * @param armM part of it that is bending of the pedal's arm
     * @param flangeM movement of the masters along their rods
     * @param asideM movement of the pad across the car under the sideways share
     */
    public record LoadState(Asked asked, double footN, double padM, double armM, double flangeM, double asideM) {}

    /**
     * A sheet or bar.
     *
     * @param path in the build file
     * @param name of the part
     * @param material its name
     * @param source of the material's data
     * @param yieldPa stress at which it takes a lasting set
     * @param tensilePa stress at which it breaks
     * @param at where it is stressed most
     * @param stiffnessPa greatest von Mises stress under the stiffness load
     * @param strengthPa the same under the strength load, as if it stayed elastic
     * @param yieldsAtN foot force at which it begins to yield
     * @param breaksAtN foot force at which the elastic stress reaches what breaks the material
     */
    public record PartState(
            String path,
            String name,
            String material,
            String source,
            double yieldPa,
            double tensilePa,
            Place at,
            double stiffnessPa,
            double strengthPa,
            double yieldsAtN,
            double breaksAtN) {}

    /**
     * A bolt; forces under the strength load.
     *
     * @param path in the build file
     * @param name of the bracket, and the bolt's number
     * @param pullN that comes to it
     * @param prying share that prying adds; null when the bracket's foot is not told
     * @param tensionN pull with prying
     * @param shearN across it
     * @param preloadN from tightening
     * @param preloadTold whether it follows from a torque that was told
     * @param slipsAtN foot force at which the joint slips on dry, bare steel
     * @param opensAtN foot force at which it opens; null when nothing pulls
     * @param provedToN foot force at which tension and shear together, without friction, reach what the grade proves
     * @param bearingPa between bolt and sheet
     * @param bearsToN foot force at which the sheet is crushed or torn out to its edge
     * @param engagementM of its thread
     * @param neededM of thread, so that the bolt breaks before the thread strips
     */
    public record BoltState(
            String path,
            String name,
            double pullN,
            @Nullable Double prying,
            double tensionN,
            double shearN,
            double preloadN,
            boolean preloadTold,
            double slipsAtN,
            @Nullable Double opensAtN,
            double provedToN,
            double bearingPa,
            double bearsToN,
            double engagementM,
            double neededM) {}

    /**
     * A weld.
     *
     * @param path in the build file
     * @param name of the bracket, and the weld's number
     * @param throatM of the fillet
     * @param stiffnessPa greatest stress in the throat under the stiffness load
     * @param allowedPa by common rules for working loads
     * @param holdsToN foot force at which the stress is the allowed one
     */
    public record WeldState(
            String path, String name, double throatM, double stiffnessPa, double allowedPa, double holdsToN) {}

    /**
     * A bar that is pressed.
     *
     * @param path in the build file
     * @param name of the bar
     * @param pressN under the strength load
     * @param effectiveM length that bows
     * @param failsN press at which it bows out
     * @param failsAtN foot force that does it
     */
    public record ColumnState(
            String path, String name, double pressN, double effectiveM, double failsN, double failsAtN) {}

    /** Which curve of endurance was taken, of the part's own metal. */
    public enum JudgedAs {
        /** Sheet or bar with cut edges. */
        CUT_EDGE,
        /** Sheet or bar at a bolt hole. */
        AT_HOLE,
        /** Sheet or bar at the toe of a weld. */
        BESIDE_WELD,
        /** Throat of a weld. */
        WELD_THROAT,
        /** Bolt in tension. */
        BOLT_TENSION
    }

    /**
     * Endurance of a part.
     *
     * @param path in the build file
     * @param name of the part
     * @param as whose curve was taken
     * @param rangePa stress range of an everyday stop
     * @param stops until a crack, at the chance of survival asked for
     */
    public record EnduranceState(String path, String name, JudgedAs as, double rangePa, double stops) {}

    /**
     * What a place of the body takes under the strength load.
     *
     * @param path of what holds there
     * @param name of it
     * @param at middle of the place
     * @param forwardN force into the body
     * @param leftN the same
     * @param upN the same
     * @param forceN all together
     * @param momentNm all together about the middle
     */
    public record ReactionState(
            String path,
            String name,
            Place at,
            double forwardN,
            double leftN,
            double upN,
            double forceN,
            double momentNm) {}

    /** How much of what was told is on the panel; each has all that come before it. */
    public enum Dress {
        /** The panel uncut, with its brackets. */
        BARE,
        /** With patches. */
        PATCHED,
        /** With doublers. */
        DOUBLED,
        /** With stringers and cross tube: all. */
        BRACED
    }

    /**
     * The same car with so much.
     *
     * @param dress how much
     * @param massKg of what was added to the bare panel
     * @param stiffness foot force over pad movement, N/m
     * @param padM pad movement in use
     */
    public record VariantState(Dress dress, double massKg, double stiffness, double padM) {}

    /** Where an addition comes from. */
    public enum Tried {
        /** Told: what it gains is what its absence would lose. */
        TOLD,
        /** Not told: a second skin all over the panel, joined as one. */
        SKIN,
        /** Not told: a hinged tube from the pivot to something rigid, up or down. */
        UP,
        /** The same, up and back at 45 degrees. */
        UP_AND_BACK,
        /** The same, straight back. */
        BACK,
        /** The same, one to each side. */
        ASIDE
    }

    /**
     * An addition.
     *
     * @param tried what it is
     * @param path in the build file; empty when not told
     * @param name of the part; empty when not told
     * @param massKg of it
     * @param gained stiffness at the pad, N/m
     * @param gainedPerKg the same for its mass
     * @param padM pad movement in use with it
     */
    public record OptionState(
            Tried tried, String path, String name, double massKg, double gained, double gainedPerKg, double padM) {}
}
