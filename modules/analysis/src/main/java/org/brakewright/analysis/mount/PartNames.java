package org.brakewright.analysis.mount;

import java.util.LinkedHashMap;
import java.util.Map;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** What the builder calls the parts of a mount, by their paths. */
final class PartNames {
    private final Map<String, String> names = new LinkedHashMap<>();

    PartNames(Structure structure) {
        names.put("mount.panel", "panel");
        for (Plate plate : structure.plates()) {
            names.put(plate.path(), plate.name());
        }
        for (int i = 0; i < structure.stringers().size(); i++) {
            names.put("mount.stringers[" + i + "]", structure.stringers().get(i).name());
        }
        names.put("mount.cross_tube", "cross tube");
        names.put("mount.cross_tube.left", "cross tube, left end");
        names.put("mount.cross_tube.right", "cross tube, right end");
        names.put("mount.arm", "pedal arm");
        names.put("mount.rod", "pushrod");
        for (int i = 0; i < structure.brackets().size(); i++) {
            names.put(PanelPlans.bracketPath(i), structure.brackets().get(i).name());
            fasteners(structure.brackets().get(i), PanelPlans.bracketPath(i));
        }
        for (int i = 0; i < structure.panel().edges().size(); i++) {
            names.put("mount.panel.edges[" + i + "]", "panel, side " + (i + 1));
        }
    }

    private void fasteners(Bracket bracket, String path) {
        bracket.bolts().ifPresent(bolts -> {
            for (int i = 0; i < bolts.positions().size(); i++) {
                names.put(PanelPlans.boltPath(path, i), bracket.name() + ", bolt " + (i + 1));
            }
        });
        for (int i = 0; i < bracket.welds().size(); i++) {
            names.put(PanelPlans.weldPath(path, i), bracket.name() + ", weld " + (i + 1));
        }
    }

    /** The path itself where nobody gave a name. */
    String of(String path) {
        return names.getOrDefault(path, path);
    }
}
