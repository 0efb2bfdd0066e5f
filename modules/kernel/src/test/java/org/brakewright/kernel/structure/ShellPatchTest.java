package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.shell.PlaneStress;
import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Patch tests: an irregular patch whose edge moves as in a state of constant strain must take that state inside. The
 * patch is that of R. MacNeal, R. Harder (1985, from memory): 0.24 x 0.12, E = 1e6, Poisson's ratio 0.25, t = 0.001.
 */
class ShellPatchTest {
    private static final Sheet SHEET = new Sheet(1e-3, 1e6, 0.25);
    private static final double[][] CORNERS = {{0, 0}, {0.24, 0}, {0.24, 0.12}, {0, 0.12}};
    private static final double[][] INNER = {{0.04, 0.02}, {0.18, 0.03}, {0.16, 0.08}, {0.08, 0.08}};

    /** The published strain state 1e-3 (1, 1, 1) gives 1333, 1333 and 400. */
    private static final double DIRECT = 1e6 * 1.25e-3 / (1 - 0.0625);

    /** Axes that lie askew in space, so that the patch also proves the turning of elements. */
    private static final Axes ASKEW = Axes.along(new Vector3(2, -1, 0.7), new Vector3(0.3, 0.4, 1));

    private interface Field {
        Motion at(double x, double y);
    }

    private static Motion askew(Motion motion) {
        return new Motion(askew(motion.shift()), askew(motion.turn()));
    }

    private static Vector3 askew(Vector3 v) {
        return ASKEW.x()
                .times(v.x())
                .plus(ASKEW.y().times(v.y()))
                .plus(ASKEW.z().times(v.z()));
    }

    private static CaseResult patch(Field field) {
        StructureModel.Builder model = StructureModel.builder();
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double[] at = i < 4 ? CORNERS[i] : INNER[i - 4];
            Vector3 place = askew(new Vector3(at[0], at[1], 0));
            int node = model.node(place.x(), place.y(), place.z());
            if (i < 4) {
                model.support(new Support(node, Support.CLAMP));
                Motion motion = askew(field.at(at[0], at[1]));
                for (Freedom freedom : Freedom.values()) {
                    loads.add(new Load.Settlement(node, freedom, motion.along(freedom)));
                }
            }
        }
        for (int i = 0; i < 4; i++) {
            int next = (i + 1) % 4;
            model.add(new Shell("patch", i, next, 4 + next, SHEET));
            model.add(new Shell("patch", i, 4 + next, 4 + i, SHEET));
        }
        model.add(new Shell("patch", 4, 5, 6, SHEET));
        model.add(new Shell("patch", 4, 6, 7, SHEET));
        return Structures.solved(model.build(), loads.toArray(Load[]::new));
    }

    private static void assertFieldInside(CaseResult result, Field field) {
        for (int i = 0; i < 4; i++) {
            Motion expected = askew(field.at(INNER[i][0], INNER[i][1]));
            Motion actual = result.motion(4 + i);
            assertThat(actual.shift().minus(expected.shift()).length()).isLessThan(1e-14);
            assertThat(actual.turn().minus(expected.turn()).length()).isLessThan(1e-12);
        }
    }

    @Test
    void constantStrainInThePlane() {
        Field field =
                (x, y) -> new Motion(new Vector3(1e-3 * (x + y / 2), 1e-3 * (y + x / 2), 0), new Vector3(0, 0, 0));
        CaseResult result = patch(field);
        assertFieldInside(result, field);
        for (int element = 0; element < 10; element++) {
            PlaneStress stress = result.shell(element).center().membrane();
            // the same in all directions but for shear 400, which turns with the triangle's axes
            assertThat(stress.greatestPrincipal()).isCloseTo(DIRECT + 400, withinPercentage(1e-8));
            assertThat(stress.leastPrincipal()).isCloseTo(DIRECT - 400, withinPercentage(1e-8));
            assertThat(result.shell(element).atB().membrane().greatestPrincipal())
                    .isCloseTo(DIRECT + 400, withinPercentage(1e-8));
        }
    }

    /** A drilling rotation follows the turn of the sheet as a whole. */
    @Test
    void turnInThePlaneMakesNoStress() {
        Field field = (x, y) -> new Motion(new Vector3(-1e-3 * y, 1e-3 * x, 0), new Vector3(0, 0, 1e-3));
        CaseResult result = patch(field);
        assertFieldInside(result, field);
        assertThat(result.shell(8).greatestVonMises()).isLessThan(1e-9);
    }

    /** The published deflection 1e-3 (x2 + xy + y2)/2 gives stresses of 0.667, 0.667 and 0.200 at the faces. */
    @Test
    void constantCurvature() {
        Field field = (x, y) -> new Motion(
                new Vector3(0, 0, 1e-3 * (x * x + x * y + y * y) / 2),
                new Vector3(1e-3 * (y + x / 2), -1e-3 * (x + y / 2), 0));
        CaseResult result = patch(field);
        assertFieldInside(result, field);
        for (int element = 0; element < 10; element++) {
            PlaneStress bottom = result.shell(element).center().bottom();
            assertThat(bottom.greatestPrincipal()).isCloseTo(2.0 / 3 + 0.2, withinPercentage(1e-6));
            assertThat(bottom.leastPrincipal()).isCloseTo(2.0 / 3 - 0.2, withinPercentage(1e-6));
            assertThat(result.shell(element).atC().top().leastPrincipal())
                    .isCloseTo(-2.0 / 3 - 0.2, withinPercentage(1e-6));
        }
    }

    /**
     * A rectangle of two triangles, bent in its plane, takes as much energy as a beam: E I k2 a/2 at any aspect ratio.
     * Source: C. A. Felippa, Comput. Methods Appl. Mech. Engrg. 192 (2003), the bending ratio of 1 that marks the
     * optimal triangle (from memory).
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0", "1, 0", "5, 0", "20, 0", "0.5, 0.3", "1, 0.3", "5, 0.3", "20, 0.3", "5, 0.45"})
    void bendingInThePlaneIsExact(double aspect, double poisson) {
        Sheet sheet = new Sheet(0.1, 1, poisson);
        ShellGrid grid = new ShellGrid(1, 1, (u, v) -> new Vector3(aspect * (u - 0.5), v - 0.5, 0), sheet);
        grid.holdU(true, Support.CLAMP).holdU(false, Support.CLAMP);
        StructureModel model = grid.build();
        List<Load> loads = new ArrayList<>();
        for (int node = 0; node < 4; node++) {
            double x = model.nodes().get(node).x();
            double y = model.nodes().get(node).y();
            loads.add(new Load.Settlement(node, Freedom.SHIFT_X, -x * y));
            loads.add(new Load.Settlement(node, Freedom.SHIFT_Y, (x * x + poisson * y * y) / 2));
            loads.add(new Load.Settlement(node, Freedom.TURN_Z, x));
        }
        CaseResult result = Structures.solved(model, loads.toArray(Load[]::new));
        double work = 0;
        for (int node = 0; node < 4; node++) {
            Wrench reaction = result.reaction(node);
            Motion motion = result.motion(node);
            work += reaction.force().dot(motion.shift()) + reaction.moment().dot(motion.turn());
        }
        assertThat(work).isCloseTo(0.1 / 12 * aspect, withinPercentage(1e-7));
    }

    /** A triangle that is moved without being strained pushes on nothing, and only then. */
    @Test
    void sixMotionsAreFree() {
        ShellGrid grid = new ShellGrid(1, 1, (u, v) -> new Vector3(u, v + 0.3 * u, 0.2 * u), SHEET);
        StructureModel model = new StructureModel(
                grid.build().nodes(), List.of(grid.build().elements().getFirst()), List.of(), List.of());
        double[] stiffness =
                Assembly.of(model, Leaders.of(model)).members().getFirst().stiffness(model);
        assertThat(zeroPivots(stiffness)).isEqualTo(6);
    }

    /** How many pivots vanish when the matrix is eliminated, the greatest diagonal first. */
    private static int zeroPivots(double[] matrix) {
        int n = 18;
        double[] k = matrix.clone();
        double first = 0;
        for (int i = 0; i < n; i++) {
            first = Math.max(first, k[19 * i]);
        }
        // turns and shifts of a triangle 1 across are comparable; bending is 1e-6 of membrane, rounding 1e-16
        boolean[] done = new boolean[n];
        for (int step = 0; step < n; step++) {
            int pivot = -1;
            for (int i = 0; i < n; i++) {
                if (!done[i] && (pivot < 0 || k[19 * i] > k[19 * pivot])) {
                    pivot = i;
                }
            }
            if (k[19 * pivot] < 1e-13 * first) {
                return n - step;
            }
            done[pivot] = true;
            eliminate(k, pivot);
        }
        return 0;
    }

    private static void eliminate(double[] k, int pivot) {
        for (int i = 0; i < 18; i++) {
            double share = k[18 * i + pivot] / k[19 * pivot];
            for (int j = 0; i != pivot && j < 18; j++) {
                k[18 * i + j] -= share * k[18 * pivot + j];
            }
        }
    }

    /** Poisson's contraction of a strip drawn out by its ends, free at its sides: closed form. */
    @Test
    void aStripUnderTension() {
        Sheet steel = new Sheet(2e-3, 205e9, 0.3);
        ShellGrid grid = new ShellGrid(8, 2, (u, v) -> new Vector3(0.4 * u, 0.05 * v, 0), steel);
        Set<Freedom> grip = Set.of(Freedom.SHIFT_X, Freedom.SHIFT_Z, Freedom.TURN_Y, Freedom.TURN_Z);
        grid.holdU(true, grip).holdU(false, grip).hold(grid.node(0, 0), Set.of(Freedom.SHIFT_Y));
        double stress = 10_000 / (0.05 * 2e-3);
        Load[] draw = new Load[3];
        for (int j = 0; j < 3; j++) {
            draw[j] = new Load.Settlement(grid.node(8, j), Freedom.SHIFT_X, stress / 205e9 * 0.4);
        }
        CaseResult result = Structures.solved(grid.build(), draw);
        double force = 0;
        for (int j = 0; j < 3; j++) {
            force += result.reaction(grid.node(8, j)).force().x();
        }
        assertThat(force).isCloseTo(10_000, withinPercentage(1e-8));
        assertThat(result.motion(grid.node(8, 2)).shift().y()).isCloseTo(-0.3 * stress / 205e9 * 0.05, within(1e-14));
        assertThat(result.shell(7).greatestVonMises()).isCloseTo(stress, withinPercentage(1e-6));
    }
}
