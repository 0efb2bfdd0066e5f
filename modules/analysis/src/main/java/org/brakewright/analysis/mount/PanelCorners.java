package org.brakewright.analysis.mount;

import java.util.List;
import java.util.Optional;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Place;

/** Where the panel lies in the car. */
public final class PanelCorners {
    private PanelCorners() {}

    /** Corners of its outline from the zero of the lines, m; empty when the mount is not placed in the car. */
    public static Optional<List<Place>> inCar(ResolvedMount mount) {
        PanelFrame frame = PanelFrame.leaning(mount.structure().panel().rake());
        return mount.placeInCar()
                .map(zero -> mount.structure().panel().outline().stream()
                        .map(spot -> frame.place(spot).plus(PanelFrame.vector(zero)))
                        .map((Vector3 corner) -> LoadedMount.place(corner))
                        .toList());
    }
}
