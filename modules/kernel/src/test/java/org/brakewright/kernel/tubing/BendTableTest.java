package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Points to feed, rotation and bend, and back. */
class BendTableTest {
    /** Row G1 of the check values: four points of a public forum thread, radius 1 in taken; recomputed figures, in. */
    @Test
    void twoBendsInOnePlaneOpposite() {
        BendTable table = BendTable.of(new Route(
                List.of(
                        new Point(38.5202, -14.0264, 0),
                        new Point(45.3142, -14.0264, 0),
                        new Point(45.3142, -17.5214, 0.9654),
                        new Point(48.6822, -17.5214, 0.9654)),
                List.of(1.0, 1.0)));
        assertPrinted(table.bends().getFirst().straight(), "5.794");
        assertPrinted(table.bends().getLast().straight(), "1.62588");
        assertPrinted(Math.toDegrees(table.bends().getLast().rotation()), "180.000000");
        assertPrinted(Math.toDegrees(table.bends().getLast().arc().angle()), "90.000000");
        assertPrinted(table.tail(), "2.368");
        assertPrinted(table.developedLength(), "12.9295");
    }

    /** Row G2: along three edges of a cube, right-hand about the way forward; known answer, mm. */
    @Test
    void cubeCorner() {
        BendTable table = BendTable.of(cube());
        assertThat(table.straights()).containsExactly(80.0, 60.0, 80.0);
        assertPrinted(Math.toDegrees(table.bends().getFirst().rotation()), "0");
        assertPrinted(Math.toDegrees(table.bends().getLast().rotation()), "90.000000");
        assertPrinted(table.developedLength(), "282.83185");
    }

    /** Geometry: a tube seen in a mirror turns the other way and is as long. */
    @Test
    void mirrorTurnsTheRotation() {
        Route mirrored = new Route(
                cube().points().stream()
                        .map(p -> new Point(p.x(), p.y(), -p.z()))
                        .toList(),
                cube().radii());
        BendTable table = BendTable.of(mirrored);
        assertPrinted(Math.toDegrees(table.bends().getLast().rotation()), "-90.000000");
        assertPrinted(table.developedLength(), "282.83185");
    }

    /** Row G4: legs 150 and 90 mm, R 15 mm; geometry, recomputed. */
    @ParameterizedTest
    @CsvSource({
        "30, 7.85398, 4.01924, 0.184494, 239.816",
        "60, 15.708, 8.66025, 1.61254, 238.387",
        "90, 23.5619, 15, 6.43806, 233.562",
        "120, 31.4159, 25.9808, 20.5456, 219.454"
    })
    void oneBend(double degrees, String arc, String tangent, String gain, String length) {
        double angle = Math.toRadians(degrees);
        BendArc bend = new BendArc(15, angle);
        assertPrinted(bend.arc(), arc);
        assertPrinted(bend.tangent(), tangent);
        assertPrinted(bend.gain(), gain);
        Point corner = new Point(150, 0, 0);
        Point end = corner.plus(new Point(Math.cos(angle), 0, Math.sin(angle)).times(90));
        BendTable table = BendTable.of(new Route(List.of(new Point(0, 0, 0), corner, end), List.of(15.0)));
        assertPrinted(table.developedLength(), length);
    }

    /** Round trip: 200 seeded tubes of up to 60 bends come back within 1e-9 m. */
    @Test
    void tableMakesThePointsAgain() {
        Random random = new Random(11);
        for (int tube = 0; tube < 200; tube++) {
            Route route = route(random, 1 + random.nextInt(60));
            Route again = BendTable.of(route).route(Placement.of(route));
            assertThat(again.points()).hasSameSizeAs(route.points());
            for (int i = 0; i < route.points().size(); i++) {
                assertThat(again.points().get(i).minus(route.points().get(i)).length())
                        .isLessThan(1e-9);
            }
        }
    }

    /** A straight tube has no row, and lies where it did whatever its direction. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "0, 0, -2", "1, 2, 3"})
    void straightTube(double x, double y, double z) {
        Route route = new Route(List.of(new Point(0, 0, 0), new Point(x, y, z)), List.of());
        BendTable table = BendTable.of(route);
        assertThat(table.bends()).isEmpty();
        assertThat(table.developedLength()).isCloseTo(Math.sqrt(x * x + y * y + z * z), within(1e-12));
        Point end = table.route(Placement.of(route)).points().getLast();
        assertThat(end.minus(new Point(x, y, z)).length()).isLessThan(1e-12);
        assertThat(new BenderTool(1, 1, 1).spare(table)).isEmpty();
    }

    /** Bends whose set-backs pass one another show as a straight below zero: 100 - 2 x 60 mm of the cube's middle edge. */
    @Test
    void overlappingBendsShow() {
        BendTable table = BendTable.of(new Route(cube().points(), List.of(60.0, 60.0)));
        assertThat(table.straights().get(1)).isCloseTo(-20, within(1e-9));
    }

    /** By hand from row G2: straights 80, 60, 80 against grips 85, 50, 80. */
    @Test
    void gripsInOrder() {
        assertThat(new BenderTool(85, 50, 80).spare(BendTable.of(cube()))).containsExactly(-5.0, 10.0, 0.0);
        assertThat(new EndAllowance(1, 70).spare(80)).isEqualTo(10);
    }

    @Test
    void refusesWhatNoTubeCanBe() {
        Point a = new Point(0, 0, 0);
        Point b = new Point(1, 0, 0);
        refuses("points must be 2 or more", List.of(a), List.of());
        refuses("distance between successive points", List.of(a, b, b), List.of(0.1));
        refuses("must turn the tube", List.of(a, b, new Point(2, 0, 0)), List.of(0.1));
        refuses("must turn the tube", List.of(a, b, a), List.of(0.1));
        refuses("radii must be one for each", List.of(a, b), List.of(0.1));
        refuses("radius must be above 0", List.of(a, b, new Point(1, 1, 0)), List.of(0.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Placement(a, b, b))
                .withMessageContaining("square");
    }

    private static void refuses(String why, List<Point> points, List<Double> radii) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Route(points, radii))
                .withMessageContaining(why);
    }

    private static Route cube() {
        return new Route(
                List.of(new Point(0, 0, 0), new Point(100, 0, 0), new Point(100, 100, 0), new Point(100, 100, 100)),
                List.of(20.0, 20.0));
    }

    private static Route route(Random random, int bends) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0, 0)));
        IntStream.rangeClosed(0, bends)
                .forEach(i -> points.add(points.getLast()
                        .plus(new Point(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                                .times(0.2))));
        return new Route(
                points,
                IntStream.range(0, bends)
                        .mapToObj(i -> 0.01 + 0.02 * random.nextDouble())
                        .toList());
    }
}
