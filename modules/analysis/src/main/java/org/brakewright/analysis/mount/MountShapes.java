package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Loads;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** Works out the mount to be looked at. */
public final class MountShapes {
    private MountShapes() {}

    /** Of a build; empty when no mount is told. */
    public static Optional<MountShape> of(ResolvedBuild build) {
        return build.mount().flatMap(mount -> of(mount, build.pedal().ratio()));
    }

    private static Optional<MountShape> of(ResolvedMount mount, double ratio) {
        return Settling.of(mount.structure()) instanceof Settled.Firm firm
                ? LoadedMount.of(mount, firm.mesh(), ratio).map(built -> shape(built, ratio))
                : Optional.empty();
    }

    private static MountShape shape(LoadedMount built, double ratio) {
        MountDrawing drawing = new MountDrawing(built);
        Loads loads = built.mount().loads();
        List<MountShape.Push> pushes = new ArrayList<>();
        pushes.add(drawing.push(built, Dress.BRACED, Asked.FUNCTION, loads.function()));
        pushes.add(drawing.push(built, Dress.BRACED, Asked.STIFFNESS, loads.stiffness()));
        pushes.add(drawing.push(built, Dress.BRACED, Asked.STRENGTH, loads.strength()));
        Structure before = built.mount().structure();
        for (Dress dress : List.of(Dress.DOUBLED, Dress.PATCHED, Dress.BARE)) {
            Structure dressed = Variants.dressed(built.mount().structure(), dress);
            if (!dressed.equals(before)) {
                less(built, dressed, ratio)
                        .ifPresent(loaded -> pushes.add(drawing.push(loaded, dress, Asked.FUNCTION, loads.function())));
            }
            before = dressed;
        }
        return new MountShape(drawing.sheets(), drawing.bars(), List.copyOf(pushes));
    }

    /** On the same mesh, so that the same points move. */
    private static Optional<LoadedMount> less(LoadedMount built, Structure dressed, double ratio) {
        ResolvedMount mount = built.mount();
        ResolvedMount changed =
                new ResolvedMount(dressed, mount.pedal(), mount.loads(), mount.placeInCar(), mount.measured());
        return LoadedMount.of(changed, built.mesh(), ratio);
    }
}
