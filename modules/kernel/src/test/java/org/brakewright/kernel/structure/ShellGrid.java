package org.brakewright.kernel.structure;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.brakewright.kernel.structure.shell.Sheet;

/** A curved rectangle cut into cells of two triangles each. */
final class ShellGrid {
    /** Where the point is whose two coordinates run from 0 to 1. */
    interface Surface {
        Vector3 at(double u, double v);
    }

    final StructureModel.Builder model = StructureModel.builder();
    final int across;
    final int along;
    private final Map<Integer, Set<Freedom>> held = new HashMap<>();
    private final Sheet sheet;

    /**
     * A mesh over the surface.
     *
     * @param across cells along u
     * @param along cells along v
     */
    ShellGrid(int across, int along, Surface surface, Sheet sheet) {
        this.across = across;
        this.along = along;
        this.sheet = sheet;
        for (int j = 0; j <= along; j++) {
            for (int i = 0; i <= across; i++) {
                Vector3 at = surface.at((double) i / across, (double) j / along);
                model.node(at.x(), at.y(), at.z());
            }
        }
        for (int j = 0; j < along; j++) {
            for (int i = 0; i < across; i++) {
                cell(i, j);
            }
        }
    }

    private void cell(int i, int j) {
        int a = node(i, j);
        int b = node(i + 1, j);
        int c = node(i + 1, j + 1);
        int d = node(i, j + 1);
        model.add(new Shell("sheet", a, b, c, sheet));
        model.add(new Shell("sheet", a, c, d, sheet));
    }

    int node(int i, int j) {
        return j * (across + 1) + i;
    }

    int elements() {
        return 2 * across * along;
    }

    /** Holds the nodes of the line u = 0 (first) or u = 1. */
    ShellGrid holdU(boolean first, Set<Freedom> freedoms) {
        for (int j = 0; j <= along; j++) {
            hold(node(first ? 0 : across, j), freedoms);
        }
        return this;
    }

    /** Holds the nodes of the line v = 0 (first) or v = 1. */
    ShellGrid holdV(boolean first, Set<Freedom> freedoms) {
        for (int i = 0; i <= across; i++) {
            hold(node(i, first ? 0 : along), freedoms);
        }
        return this;
    }

    ShellGrid hold(int node, Set<Freedom> freedoms) {
        held.putIfAbsent(node, EnumSet.noneOf(Freedom.class));
        held.get(node).addAll(freedoms);
        return this;
    }

    StructureModel build() {
        held.forEach((node, freedoms) -> model.support(new Support(node, freedoms)));
        return model.build();
    }

    /** The same load on every triangle. */
    Load[] everywhere(Vector3 perArea) {
        Load[] loads = new Load[elements()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = new Load.OnShell(i, perArea);
        }
        return loads;
    }

    /** Symmetry about a plane square to x. */
    static final Set<Freedom> MIRROR_X = EnumSet.of(Freedom.SHIFT_X, Freedom.TURN_Y, Freedom.TURN_Z);

    static final Set<Freedom> MIRROR_Y = EnumSet.of(Freedom.SHIFT_Y, Freedom.TURN_X, Freedom.TURN_Z);
    static final Set<Freedom> MIRROR_Z = EnumSet.of(Freedom.SHIFT_Z, Freedom.TURN_X, Freedom.TURN_Y);
}
