package org.brakewright.app.scene;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.brakewright.app.Cars;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.NamedPlace;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** Every number is a place in the example's build file, or follows from two of them as said. */
class SceneMakerTest {
    private static final String CAR = Cars.text("hill-climber");
    private static final String PLACE = "place_in_car: {forward: 0 mm, left: 320 mm, up: 500 mm}";

    @Test
    void tubesPartsAndSurroundingsStandWhereTheFilePutsThem() {
        SceneView scene = scene(CAR, UnitSystem.METRIC);
        Body tube = body(scene, "tube:front master to tee");
        assertThat(tube.shape()).isEqualTo(Shape.ROD);
        assertThat(tube.points().subList(0, 3)).containsExactly(100.0, 350.0, 500.0);
        assertThat(tube.points().subList(tube.points().size() - 3, tube.points().size()))
                .containsExactly(600.0, 200.0, 240.0);
        // 3/16 in is 4.7625 mm.
        assertThat(tube.radius()).isCloseTo(4.7625 / 2, offset(0.005));
        assertThat(body(scene, "part:front tee").points()).containsExactly(600.0, 200.0, 240.0);
        assertThat(body(scene, "obstacle:gearbox").points()).containsExactly(0.0, -150.0, 200.0, -600.0, 80.0, 450.0);
        assertThat(place(scene, "front master to tee, corner 1")).containsExactly(250.0, 350.0, 500.0);
    }

    @Test
    void aPedalWithoutAMountIsLeftOutAndTheAdviceSaysWhatToGive() {
        SceneView scene = scene(CAR.replaceFirst("(?s)\nmount:.*?\n(?=plumbing:)", "\n"), UnitSystem.METRIC);
        assertThat(scene.bodies()).extracting(Body::group).doesNotContain(Group.PEDALS);
        assertThat(scene.advice()).contains("give the mount");
    }

    @Test
    void aPedalWithoutAPlaceAmongTheLinesIsLeftOutAndTheAdviceSaysWhy() {
        SceneView scene = scene(
                CAR.replace(PLACE, "").replaceFirst("(?s)\\nfootwell:.*?\\n(?=plumbing:)", "\n"), UnitSystem.METRIC);
        assertThat(scene.bodies()).extracting(Body::group).doesNotContain(Group.PEDALS);
        assertThat(scene.advice()).contains("mount.place_in_car");
    }

    @Test
    void aPlacedMountPutsThePedalAmongTheLines() {
        SceneView scene = scene(CAR, UnitSystem.METRIC);
        // The pivot's place on the mount plus the place of the mount's zero; the pad a pad arm of 268 mm below it, 10
        // mm to the right.
        assertThat(place(scene, "pedal pivot")).containsExactly(-170.0, 320.0, 554.0);
        assertThat(place(scene, "middle of the brake pad")).containsExactly(-170.0, 310.0, 286.0);
        assertThat(scene.advice()).doesNotContain("left out");
    }

    @Test
    void pushesMoveWhatIsDrawnAsFarAsComputed() {
        SceneView scene = scene(CAR, UnitSystem.METRIC);
        assertThat(scene.pushes()).extracting(SceneView.Push::name).contains("500 N, in use", "500 N, bare panel");
        for (SceneView.Push push : scene.pushes()) {
            for (SceneView.Moved moved : push.moved()) {
                Body body = body(scene, moved.body());
                int pieces = body.shape() == Shape.MESH
                        ? body.triangles().size() / 3
                        : body.points().size() / 3 - 1;
                assertThat(moved.shifts()).as(body.key()).hasSameSizeAs(body.points());
                assertThat(moved.stresses().size()).as(body.key()).isIn(0, pieces);
                assertThat(moved.stresses()).allMatch(stress -> stress <= push.highest());
            }
            assertThat(push.moved()).flatExtracting(SceneView.Moved::stresses).contains(push.highest());
        }
    }

    @Test
    void thePadMovesAsTheReportSays() {
        SceneView.Push use = scene(CAR, UnitSystem.METRIC).pushes().getFirst();
        List<Double> pad = use.moved().stream()
                .filter(moved -> moved.body().equals("pedal:pad"))
                .findFirst()
                .orElseThrow()
                .shifts();
        double computed = requireNonNull(Cars.assessed(CAR).analysis().mount())
                .loads()
                .getFirst()
                .padM();
        // The arm hangs plumb, so the foot pushes forward.
        assertThat(pad.getFirst()).isCloseTo(1000 * computed, offset(0.01));
    }

    @Test
    void thePanelsBulgeSideBySide() {
        SceneView scene = scene(CAR, UnitSystem.METRIC);
        var bulges = requireNonNull(scene.bulges());
        assertThat(bulges.series()).extracting("label").containsExactly("bare", "patched", "doubled", "all");
        assertThat(bulges.series()).allSatisfy(series -> assertThat(series.x()).isSorted());
    }

    @Test
    void padsStandWhereTheFilePutsThemAndObstaclesOnce() {
        SceneView scene = scene(CAR, UnitSystem.METRIC);
        assertThat(place(scene, "throttle pad, middle")).containsExactly(-150.0, 225.0, 275.0);
        List<Double> corners = body(scene, "footwell:clutch").points();
        // A pad of 60 mm in the middle of 425 mm, on a plumb arm: half its height and half its thickness from its
        // middle.
        for (int i = 0; i < corners.size(); i += 3) {
            assertThat(Math.abs(corners.get(i) + 170)).isCloseTo(3, offset(0.01));
            assertThat(Math.abs(corners.get(i + 1) - 425)).isCloseTo(30, offset(0.01));
            assertThat(Math.abs(corners.get(i + 2) - 286)).isCloseTo(30, offset(0.01));
        }
        assertThat(scene.bodies())
                .extracting(Body::key)
                .contains("obstacle:steering shaft")
                .doesNotHaveDuplicates();
    }

    @Test
    void aPedalAloneStandsAboutItsPivot() {
        SceneView scene = scene(Cars.text("heavy-tourer"), UnitSystem.METRIC);
        assertThat(scene.bodies()).extracting(Body::group).containsOnly(Group.PEDALS);
        assertThat(body(scene, "pedal:arm").points())
                .containsExactly(0.0, 0.0, 0.0, -13.0, 0.0, -53.5, -20.0, 0.0, -330.0);
        List<Double> disc = body(scene, "pedal:pad").points();
        // Square to the arm: the disc's axis has no part along it.
        double along = (disc.get(3) - disc.get(0)) * -20 + (disc.get(5) - disc.get(2)) * -330;
        assertThat(along).isCloseTo(0, offset(330 * 0.01));
        assertThat(disc.get(3)).as("toward the foot").isLessThan(disc.get(0));
    }

    @Test
    void lengthsAreReadInTheUnitShown() {
        assertThat(scene(Cars.text("heavy-tourer"), UnitSystem.METRIC).scale())
                .isEqualTo(new SceneView.Scale("mm", 1, 1));
        SceneView.Scale inches = scene(Cars.text("heavy-tourer"), UnitSystem.US).scale();
        assertThat(inches.symbol()).isEqualTo("in");
        assertThat(inches.perMm()).isCloseTo(1 / 25.4, offset(1e-12));
    }

    @Test
    void aCarWithoutPlacesIsToldWhatToGive() {
        SceneView scene = scene(Cars.text("shop-pickup"), UnitSystem.METRIC);
        assertThat(scene.bodies()).isEmpty();
        assertThat(scene.advice()).contains("pedal.mechanism", "mount", "plumbing");
    }

    private static SceneView scene(String text, UnitSystem system) {
        return new SceneMaker(new Show(system)).make(Cars.assessed(text), 3);
    }

    private static Body body(SceneView scene, String key) {
        return scene.bodies().stream()
                .filter(body -> body.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> place(SceneView scene, String name) {
        return scene.places().stream()
                .filter(place -> place.name().equals(name))
                .map(NamedPlace::at)
                .findFirst()
                .orElseThrow();
    }
}
