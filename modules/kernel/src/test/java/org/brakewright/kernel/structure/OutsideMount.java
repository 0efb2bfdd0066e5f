package org.brakewright.kernel.structure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.kernel.structure.shell.Sheet;

/**
 * One whole mount, small enough to be written down for two programs: a clamped firewall panel, a stiff bracket on it, two
 * stringers from the bracket's upper corners up to the body, and a cranked arm to the pad. Invented; m, Pa, N.
 */
final class OutsideMount {
    static final double YOUNG = 205e9;
    static final double POISSON = 0.3;
    static final double WIDTH = 0.6;
    static final double HEIGHT = 0.4;
    static final double PANEL = 1.2e-3;

    /** A bracket of 30 mm on sheet of 1.2 mm, told as sheet of one thickness: (30/1.2) cubed as stiff. */
    static final double BRACKET_YOUNG = YOUNG * 15_625;

    static final double ARM = 20e-3;
    static final double STRINGER = 12e-3;
    static final Vector3 PUSH = new Vector3(0, 0, -500);

    /** Places of a straight bar of square section. */
    record Bar(double side, Vector3 from, Vector3 to) {
        /** Whether it begins where the bar before it ends, not on the panel. */
        boolean goesOn() {
            return from.z() > 0;
        }
    }

    /** The arm in two parts, then the stringers; they meet the panel where both begin. */
    static final List<Bar> BARS = List.of(
            new Bar(ARM, new Vector3(0.30, 0.20, 0), new Vector3(0.30, 0.20, 0.10)),
            new Bar(ARM, new Vector3(0.30, 0.20, 0.10), new Vector3(0.30, -0.05, 0.10)),
            new Bar(STRINGER, new Vector3(0.24, 0.24, 0), new Vector3(0.24, 0.50, 0.25)),
            new Bar(STRINGER, new Vector3(0.36, 0.24, 0), new Vector3(0.36, 0.50, 0.25)));

    static final Vector3 PAD = BARS.get(1).to();

    private OutsideMount() {}

    /** Whether a place on the panel lies within the bracket. */
    static boolean stiff(double x, double y) {
        return Math.abs(x - 0.30) < 0.06 && Math.abs(y - 0.20) < 0.04;
    }

    /** Ours, with cells of 10 mm. */
    static final class Ours {
        private static final int ACROSS = 60;
        private static final int UP = 40;

        private final StructureModel.Builder model = StructureModel.builder();
        private final List<Shell> shells = new ArrayList<>();
        final int pad;
        final CaseResult result;

        Ours() {
            for (int j = 0; j <= UP; j++) {
                for (int i = 0; i <= ACROSS; i++) {
                    int node = model.node(WIDTH * i / ACROSS, HEIGHT * j / UP, 0);
                    if (i == 0 || i == ACROSS || j == 0 || j == UP) {
                        model.support(new Support(node, Support.CLAMP));
                    }
                }
            }
            panel();
            pad = bars();
            result = Structures.solved(model.build(), new Load.OnNode(pad, Wrench.ofForce(PUSH)));
        }

        private int node(int i, int j) {
            return j * (ACROSS + 1) + i;
        }

        private void panel() {
            for (int j = 0; j < UP; j++) {
                for (int i = 0; i < ACROSS; i++) {
                    boolean stiff = stiff(WIDTH * (i + 0.5) / ACROSS, HEIGHT * (j + 0.5) / UP);
                    Sheet sheet = new Sheet(PANEL, stiff ? BRACKET_YOUNG : YOUNG, POISSON);
                    add(new Shell("panel", node(i, j), node(i + 1, j), node(i + 1, j + 1), sheet));
                    add(new Shell("panel", node(i, j), node(i + 1, j + 1), node(i, j + 1), sheet));
                }
            }
        }

        private void add(Shell shell) {
            model.add(shell);
            shells.add(shell);
        }

        private int at(Vector3 place) {
            return place.z() == 0
                    ? node((int) Math.rint(ACROSS * place.x() / WIDTH), (int) Math.rint(UP * place.y() / HEIGHT))
                    : model.node(place.x(), place.y(), place.z());
        }

        private int bars() {
            int end = -1;
            for (Bar bar : BARS) {
                int from = bar.goesOn() ? end : at(bar.from());
                end = at(bar.to());
                BeamProperty property =
                        new BeamProperty(Sections.flat(bar.side(), bar.side()), YOUNG, YOUNG / 2 / (1 + POISSON));
                model.add(new Beam("bar", BeamEnd.fixed(from), BeamEnd.fixed(end), new Vector3(1, 0, 0), property));
                if (bar.side() == STRINGER) {
                    model.support(new Support(end, Support.CLAMP));
                }
            }
            return end - 2;
        }

        /** Von Mises stress (Pa) of the face toward the pad at a node's place, the mean of the triangles around it. */
        double stress(double x, double y) {
            int node = at(new Vector3(x, y, 0));
            return shells.stream()
                    .filter(shell -> shell.a() == node || shell.b() == node || shell.c() == node)
                    .mapToDouble(shell ->
                            result.shell(shells.indexOf(shell)).center().top().vonMises())
                    .average()
                    .orElseThrow();
        }
    }
}
