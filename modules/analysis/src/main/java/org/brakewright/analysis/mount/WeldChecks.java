package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.kernel.fastener.Point;
import org.brakewright.kernel.fastener.WeldGroup;
import org.brakewright.kernel.fastener.WeldLine;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Material;
import org.brakewright.model.resolved.ResolvedMount.Weld;

/**
 * What a foot of 1 N does to the welds on the panel. A weld is held by springs at the nodes along it, each for an even
 * part of its length; the force there over the throat is taken as shear, whichever way it points.
 *
 * <p>Allowed: Shigley's Mechanical Engineering Design, table 9-4: 0.30 of the tensile strength of the weld, 0.40 of the
 * yield stress of the parts; the filler is taken as strong as the parts (from memory).
 */
final class WeldChecks {
    private static final double OF_TENSILE = 0.30;
    private static final double OF_YIELD = 0.40;

    private final LoadedMount loaded;
    private final PartNames names;

    WeldChecks(LoadedMount loaded, PartNames names) {
        this.loaded = loaded;
        this.names = names;
    }

    List<WeldState> states() {
        List<WeldState> states = new ArrayList<>();
        List<Bracket> brackets = loaded.mount().structure().brackets();
        for (int i = 0; i < brackets.size(); i++) {
            List<Weld> welds = brackets.get(i).welds();
            for (int weld = 0; weld < welds.size(); weld++) {
                states.add(state(PanelPlans.weldPath(PanelPlans.bracketPath(i), weld), welds.get(weld)));
            }
        }
        return List.copyOf(states);
    }

    private WeldState state(String path, Weld weld) {
        double stress = stress(path, weld);
        Material sheet = loaded.mount().structure().panel().material();
        double allowed = Math.min(OF_TENSILE * sheet.tensileStrength(), OF_YIELD * sheet.yieldStress());
        return new WeldState(
                path,
                names.of(path),
                group(weld).throat(),
                stress * loaded.mount().loads().stiffness(),
                allowed,
                BoltChecks.foot(allowed / stress));
    }

    /** Greatest in the throat, Pa/N. */
    private double stress(String path, Weld weld) {
        List<Integer> springs = loaded.model().fasteners().getOrDefault(path, List.of());
        double area = group(weld).throat() * group(weld).length() / Math.max(1, springs.size());
        return springs.stream()
                .mapToDouble(spring ->
                        loaded.greatest(result -> result.spring(spring).force().length()) / area)
                .max()
                .orElse(0);
    }

    private static WeldGroup group(Weld weld) {
        WeldLine line = new WeldLine(
                new Point(weld.from().across(), weld.from().up()),
                new Point(weld.to().across(), weld.to().up()));
        return new WeldGroup(List.of(line), weld.leg());
    }
}
