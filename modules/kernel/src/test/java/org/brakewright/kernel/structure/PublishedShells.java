package org.brakewright.kernel.structure;

import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.EnumSet;
import org.brakewright.kernel.structure.shell.Sheet;

/**
 * The published shell set. R. MacNeal, R. Harder, A proposed standard set of problems to test finite element accuracy,
 * Finite Elements in Analysis and Design 1 (1985), pp. 3-20: shapes, loads and reference values from memory. Units as
 * there.
 */
final class PublishedShells {
    private PublishedShells() {}

    /** Straight cantilever 6 x 0.2 x 0.1 with unit end load; the movement along the load. */
    static double straight(int cells, boolean inPlane) {
        ShellGrid grid =
                new ShellGrid(6 * cells, cells, (u, v) -> new Vector3(6 * u, 0.2 * v, 0), new Sheet(0.1, 1e7, 0.3));
        grid.holdU(true, Support.CLAMP);
        return tip(grid, inPlane ? new Vector3(0, 1, 0) : new Vector3(0, 0, 1));
    }

    /** Beam 12 long, 1.1 wide, twisted by 90 degrees, with unit end load; the movement along the load. */
    static double twisted(int cells, double thickness, boolean inPlane) {
        Sheet sheet = new Sheet(thickness, 29e6, 0.22);
        ShellGrid grid = new ShellGrid(6 * cells, cells, PublishedShells::twist, sheet);
        grid.holdU(true, Support.CLAMP);
        return tip(grid, inPlane ? new Vector3(0, 0, 1) : new Vector3(0, 1, 0));
    }

    private static Vector3 twist(double u, double v) {
        double angle = Math.PI / 2 * u;
        double across = 1.1 * (v - 0.5);
        return new Vector3(12 * u, across * Math.cos(angle), across * Math.sin(angle));
    }

    /** A unit load spread over the nodes of the end; their mean movement along it. */
    private static double tip(ShellGrid grid, Vector3 direction) {
        int nodes = grid.along + 1;
        Load[] loads = new Load[nodes];
        for (int j = 0; j < nodes; j++) {
            double share = (j == 0 || j == grid.along ? 0.5 : 1.0) / grid.along;
            loads[j] = new Load.OnNode(grid.node(grid.across, j), Wrench.ofForce(direction.times(share)));
        }
        CaseResult result = solved(grid.build(), loads);
        double sum = 0;
        for (int j = 0; j < nodes; j++) {
            sum += result.motion(grid.node(grid.across, j)).shift().dot(direction) / nodes;
        }
        return sum;
    }

    /**
     * A quarter of a plate 2 wide, under even load 1e-4 or a middle load of 4e-4; deflection of the middle.
     *
     * @param length of the plate over its width
     */
    static double plate(int cells, double length, boolean clamped, boolean even) {
        Sheet sheet = new Sheet(1e-4, 1.7472e7, 0.3);
        ShellGrid grid = new ShellGrid(cells, cells, (u, v) -> new Vector3(u, length * v, 0), sheet);
        grid.holdU(true, ShellGrid.MIRROR_X).holdV(true, ShellGrid.MIRROR_Y);
        grid.holdU(false, clamped ? Support.CLAMP : EnumSet.of(Freedom.SHIFT_Z, Freedom.TURN_X));
        grid.holdV(false, clamped ? Support.CLAMP : EnumSet.of(Freedom.SHIFT_Z, Freedom.TURN_Y));
        Load[] loads =
                even ? grid.everywhere(new Vector3(0, 0, 1e-4)) : new Load[] {force(grid.node(0, 0), 0, 0, 1e-4)};
        return solved(grid.build(), loads).motion(grid.node(0, 0)).shift().z();
    }

    /** An eighth of a cylinder, radius 300, length 600, wall 3, pinched by two unit loads, ends held round. */
    static double pinchedCylinder(int cells) {
        ShellGrid grid = new ShellGrid(
                cells,
                cells,
                (u, v) -> new Vector3(300 * Math.sin(Math.PI / 2 * u), 300 * v, 300 * Math.cos(Math.PI / 2 * u)),
                new Sheet(3, 3e6, 0.3));
        grid.holdU(true, ShellGrid.MIRROR_X).holdU(false, ShellGrid.MIRROR_Z);
        grid.holdV(true, ShellGrid.MIRROR_Y);
        grid.holdV(false, EnumSet.of(Freedom.SHIFT_X, Freedom.SHIFT_Z, Freedom.TURN_Y));
        CaseResult result = solved(grid.build(), force(grid.node(0, 0), 0, 0, -0.25));
        return -result.motion(grid.node(0, 0)).shift().z();
    }

    /** A quarter of a roof, radius 25, length 50, 40 degrees to each side, weight 90; the middle of the free edge. */
    static double roof(int cells) {
        double reach = Math.toRadians(40);
        ShellGrid grid = new ShellGrid(
                cells,
                cells,
                (u, v) -> new Vector3(25 * Math.sin(reach * u), 25 * v, 25 * Math.cos(reach * u)),
                new Sheet(0.25, 4.32e8, 0));
        grid.holdU(true, ShellGrid.MIRROR_X).holdV(true, ShellGrid.MIRROR_Y);
        grid.holdV(false, EnumSet.of(Freedom.SHIFT_X, Freedom.SHIFT_Z));
        CaseResult result = solved(grid.build(), grid.everywhere(new Vector3(0, 0, -90)));
        return -result.motion(grid.node(cells, 0)).shift().z();
    }

    /** A quarter of a hemisphere, radius 10, wall 0.04, open 18 degrees at the top, pulled and pushed by unit loads. */
    static double hemisphere(int cells) {
        ShellGrid grid = new ShellGrid(
                cells,
                cells,
                (u, v) -> {
                    double rise = Math.toRadians(72 * v);
                    double turn = Math.PI / 2 * u;
                    double flat = 10 * Math.cos(rise);
                    return new Vector3(flat * Math.cos(turn), flat * Math.sin(turn), 10 * Math.sin(rise));
                },
                new Sheet(0.04, 6.825e7, 0.3));
        grid.holdU(true, ShellGrid.MIRROR_Y).holdU(false, ShellGrid.MIRROR_X);
        grid.hold(grid.node(0, 0), EnumSet.of(Freedom.SHIFT_Z));
        Load pull = force(grid.node(0, 0), 1, 0, 0);
        CaseResult result = solved(grid.build(), pull, force(grid.node(cells, 0), 0, -1, 0));
        return result.motion(grid.node(0, 0)).shift().x();
    }
}
