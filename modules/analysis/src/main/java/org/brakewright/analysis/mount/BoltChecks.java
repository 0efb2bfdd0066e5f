package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.kernel.fastener.BoltGrade;
import org.brakewright.kernel.fastener.BoltHole;
import org.brakewright.kernel.fastener.BoltStress;
import org.brakewright.kernel.fastener.Grip;
import org.brakewright.kernel.fastener.Preload;
import org.brakewright.kernel.fastener.Prying;
import org.brakewright.kernel.fastener.ScrewThread;
import org.brakewright.kernel.fastener.ThreadFit;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.mount.Side;
import org.brakewright.model.resolved.ResolvedMount.Bolts;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.jspecify.annotations.Nullable;

/** What a foot of 1 N does to the bolts, and what they stand. */
final class BoltChecks {
    /** Share of the proof load that a bolt of which no torque is told is tightened to; Shigley, from memory. */
    private static final double USUAL_PRELOAD = 0.75;

    /** Torque over diameter and preload, dry; Shigley, table 8-15 (from memory). */
    private static final double NUT_FACTOR = 0.2;

    /** Between bare steel as rolled, the least class of EN 1090-2 (from memory). */
    private static final double FRICTION = 0.2;

    /** Shear at which a sheet yields, over its yield stress: energy of distortion. */
    private static final double SHEAR_YIELD = 1 / Math.sqrt(3);

    private final LoadedMount loaded;
    private final PartNames names;
    private final Seats seats;

    BoltChecks(LoadedMount loaded, PartNames names) {
        this.loaded = loaded;
        this.names = names;
        this.seats = new Seats(loaded.mount().structure(), loaded.mesh());
    }

    /** Pull and shear on a bolt, N/N. */
    record Share(double pull, double shear) {}

    List<BoltState> states() {
        List<BoltState> states = new ArrayList<>();
        List<Bracket> brackets = loaded.mount().structure().brackets();
        for (int i = 0; i < brackets.size(); i++) {
            Bracket bracket = brackets.get(i);
            String path = PanelPlans.bracketPath(i);
            bracket.bolts().ifPresent(bolts -> {
                for (int bolt = 0; bolt < bolts.positions().size(); bolt++) {
                    states.add(state(PanelPlans.boltPath(path, bolt), bracket.side(), bolts, bolt));
                }
            });
        }
        return List.copyOf(states);
    }

    private BoltState state(String path, Side side, Bolts bolts, int index) {
        Share share = share(path, side);
        double strength = loaded.mount().loads().strength();
        Double prying = prying(bolts);
        double tension = share.pull() * (1 + (prying == null ? 0 : prying));
        ScrewThread thread = BoltSeats.thread(bolts);
        BoltGrade grade = BoltGrade.valueOf(bolts.grade().name());
        Preload preload = preload(bolts);
        double felt = boltShare(bolts);
        Seats.Seat seat = seats.at(path, bolts.positions().get(index));
        BoltHole hole = new BoltHole(
                bolts.screw().diameter(), bolts.hole(), seat.thickness(), Math.max(seat.edge(), bolts.hole() * 0.501));
        return new BoltState(
                path,
                names.of(path),
                share.pull() * strength,
                prying,
                tension * strength,
                share.shear() * strength,
                preload.force(),
                bolts.torque().isPresent(),
                foot(FRICTION * preload.force() / (share.shear() + FRICTION * (1 - felt) * tension)),
                tension > 0 ? foot(preload.opens(felt) / tension) : null,
                foot(grade.proofStress() / new BoltStress(thread, tension, share.shear()).equivalent()),
                hole.bearing(share.shear() * strength),
                foot(Math.min(
                        seat.yield() / hole.bearing(share.shear()),
                        SHEAR_YIELD * seat.yield() / hole.tearOut(share.shear()))),
                bolts.engagement(),
                needed(thread, grade));
    }

    /** A foot's force, or one that no foot reaches. */
    static double foot(double force) {
        return Math.min(force, MountState.NO_FOOT_N);
    }

    /** Of the worst way to push. The bracket on the driver's side pulls its bolts when it moves back. */
    Share share(String path, Side side) {
        int spring = loaded.model().fasteners().getOrDefault(path, List.of()).getFirst();
        double toBracket = side == Side.DRIVER ? -1 : 1;
        return new Share(
                Math.max(
                        0,
                        loaded.greatest(
                                result -> toBracket * force(result, spring).x())),
                loaded.greatest(result -> Math.hypot(
                        force(result, spring).y(), force(result, spring).z())));
    }

    private static Vector3 force(CaseResult result, int spring) {
        return result.spring(spring).force();
    }

    private static @Nullable Double prying(Bolts bolts) {
        return bolts.foot()
                .map(foot -> new Prying(foot.rootToBolt(), foot.boltToEdge()).ratio())
                .orElse(null);
    }

    private static Preload preload(Bolts bolts) {
        ScrewThread thread = BoltSeats.thread(bolts);
        return bolts.torque()
                .map(torque -> new Preload(thread, torque / (NUT_FACTOR * thread.diameter())))
                .orElseGet(() -> Preload.ofProof(
                        thread, BoltGrade.valueOf(bolts.grade().name()).proofStress(), USUAL_PRELOAD));
    }

    /** What a bolt feels of a pull on its closed joint. */
    double boltShare(Bolts bolts) {
        Grip grip = BoltSeats.grip(
                bolts, loaded.mount().structure().panel().material().young());
        return grip.boltShare();
    }

    private static double needed(ScrewThread thread, BoltGrade grade) {
        double breaks = grade.tensileStrength() * thread.stressArea();
        return ThreadFit.of(thread).engagementFor(breaks, grade.shearStrength(), grade.shearStrength());
    }
}
