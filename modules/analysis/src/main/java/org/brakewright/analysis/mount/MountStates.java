package org.brakewright.analysis.mount;

import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Loads;
import org.jspecify.annotations.Nullable;

/** Works out what carries the pedal. */
public final class MountStates {
    private MountStates() {}

    /** The mount of a build; null when none is told. */
    public static @Nullable MountState of(ResolvedBuild build) {
        return build.mount().flatMap(mount -> of(mount, build.pedal().ratio())).orElse(null);
    }

    private static Optional<MountState> of(ResolvedMount mount, double ratio) {
        return Settling.of(mount.structure()) instanceof Settled.Firm firm
                ? LoadedMount.of(mount, firm.mesh(), ratio).map(loaded -> state(loaded, firm))
                : Optional.empty();
    }

    private static MountState state(LoadedMount loaded, Settled.Firm firm) {
        ResolvedMount mount = loaded.mount();
        PartNames names = new PartNames(mount.structure());
        PartStresses stresses = new PartStresses(loaded);
        List<BoltState> bolts = new BoltChecks(loaded, names).states();
        List<WeldState> welds = new WeldChecks(loaded, names).states();
        double arm = MountStiffness.arm(mount.pedal())
                .map(stiffness -> 1 / stiffness)
                .orElse(0.0);
        Stiffening stiffening = new Stiffening(
                loaded.mesh(), loaded.forces(), arm, mount.loads().function());
        return new MountState(
                firm.mesh().triangles().size(),
                firm.change(),
                loads(loaded, firm),
                stresses.states(names, mount.loads()),
                bolts,
                welds,
                Columns.of(loaded),
                Endurance.of(loaded, names, stresses, bolts, welds),
                Reactions.of(loaded, names),
                new Variants(mount.structure(), stiffening).states(),
                BraceOptions.of(mount.structure(), firm, stiffening));
    }

    private static List<LoadState> loads(LoadedMount loaded, Settled.Firm firm) {
        Loads loads = loaded.mount().loads();
        double bare = firm.give(loaded.mount().structure(), loaded.forces());
        return List.of(
                load(Asked.FUNCTION, loads.function(), loaded, bare),
                load(Asked.STIFFNESS, loads.stiffness(), loaded, bare),
                load(Asked.STRENGTH, loads.strength(), loaded, bare));
    }

    private static LoadState load(Asked asked, double foot, LoadedMount loaded, double bare) {
        double pad = loaded.pad();
        return new LoadState(
                asked, foot, pad * foot, (pad - bare) * foot, loaded.flange() * foot, loaded.aside() * foot);
    }
}
