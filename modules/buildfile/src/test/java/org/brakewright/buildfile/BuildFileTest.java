package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.brakewright.model.Build;
import org.brakewright.model.Given;
import org.brakewright.model.Origin;
import org.brakewright.model.Problem;
import org.brakewright.model.brake.CaliperType;
import org.brakewright.model.brake.DiscBrake;
import org.brakewright.model.brake.DrumBrake;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.hydraulics.TwinMasters;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.intent.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A build file becomes a build; the expected values are the figures of the text in SI, one inch being 25.4 mm exactly. */
class BuildFileTest {

    @Test
    void readsTheWholeFile() {
        Build build = Texts.build(Texts.larkspur());
        assertThat(build.format()).isEqualTo(1);
        assertThat(build.name()).isEqualTo("Larkspur special");
        assertThat(build.story()).isNull();
        assertThat(build.lines()).isNull();
        assertThat(build.car().loadCases()).hasSize(1).first().satisfies(one -> {
            assertThat(one.name()).isEqualTo("driver only");
            same(one.frontAxle(), 318, 0, Origin.MEASURED, "car.load_cases[0].front_axle");
            same(one.cgHeight(), 0.4, 0.03, Origin.UNSTATED, "car.load_cases[0].cg_height");
            assertThat(one.axleLift()).isNull();
        });
        same(build.car().wheelbase(), 2.31, 0.005, Origin.MEASURED, "car.wheelbase");
        same(build.car().grip(), 1, 0, Origin.UNSTATED, "car.grip");
        assertThat(build.intent().use()).isEqualTo(Use.ROAD);
        assertThat(build.intent().ruleSets()).containsExactly(RuleSet.UN_R13H);
    }

    @Test
    void readsTheKindsOfPart() {
        Build build = Texts.build(Texts.larkspur());
        assertThat(build.front()).isInstanceOfSatisfying(DiscBrake.class, disc -> {
            assertThat(disc.caliper()).isEqualTo(CaliperType.SLIDING);
            assertThat(disc.pistons()).hasSize(1);
            same(disc.pistons().getFirst(), 0.048, 0, Origin.PART_SHEET, "front.pistons[0]");
            same(disc.padFriction(), 0.36, 0.04, Origin.ASSUMED, "front.pad_friction");
        });
        assertThat(build.rear()).isInstanceOfSatisfying(DrumBrake.class, drum -> {
            assertThat(drum.shoes()).isEqualTo(ShoeArrangement.LEADING_TRAILING);
            same(drum.wheelCylinder(), 0.75 * 0.0254, 0, Origin.UNSTATED, "rear.wheel_cylinder");
        });
        assertThat(build.apply()).isInstanceOfSatisfying(TwinMasters.class, masters -> {
            same(masters.frontMaster().bore(), 0.7 * 0.0254, 0, Origin.UNSTATED, "apply.front_master.bore");
            assertThat(masters.frontMaster().stroke()).isNull();
        });
    }

    @Test
    void readsTheFourOrigins() {
        String text =
                Texts.larkspur().replace("grip: 1.0", "grip: 0.9 (computed)").replace("64 mm", "64 mm ( Part_Sheet )");
        Build build = Texts.build(text);
        same(build.car().grip(), 0.9, 0, Origin.COMPUTED, "car.grip");
        assertThat(build.apply())
                .isInstanceOfSatisfying(
                        TwinMasters.class,
                        masters -> assertThat(masters.balanceBar())
                                .satisfies(bar -> same(
                                        bar.clevisSpacing(),
                                        0.064,
                                        0,
                                        Origin.PART_SHEET,
                                        "apply.balance_bar.clevis_spacing")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"dot_5_1", "DOT 5.1", "Dot-5.1", "DOT_5_1", "'dot 5 1'"})
    void readsAChoiceHoweverItIsSpelled(String grade) {
        Build build = Texts.build(Texts.larkspur() + "fluid: {grade: " + grade + "}\n");
        assertThat(build.fluid()).isNotNull().extracting("grade").hasToString("DOT_5_1");
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "true, true", "Yes, true", "no, false", "false, false"})
    void readsYesAndNo(String written, boolean meant) {
        Build build = Texts.build(Texts.larkspur() + "checks: {no_leak: " + written + "}\n");
        assertThat(build.checks()).isNotNull().extracting("noLeak").isEqualTo(meant);
    }

    @Test
    void takesOneQuantityForAListOfOne() {
        Build build = Texts.build(Texts.larkspur().replace("[48 mm (part sheet)]", "48 mm"));
        assertThat(build.front()).isInstanceOfSatisfying(DiscBrake.class, disc -> {
            same(disc.pistons().getFirst(), 0.048, 0, Origin.UNSTATED, "front.pistons[0]");
            assertThat(disc.pistons()).hasSize(1);
        });
    }

    /** 700 mm times 0.001 is a hair more than 0.7 in doubles; 0.7 m is the limit of the model. */
    @Test
    void aLimitInAnotherUnitIsTheLimit() {
        Build build = Texts.build(Texts.larkspur().replace("285 mm", "700 mm"));
        assertThat(build.car().frontTyreRadius().si()).isEqualTo(0.7);
    }

    @Test
    void anEmptyOptionalKeyIsNotGiven() {
        Build build = Texts.build(Texts.larkspur().replace("grip: 1.0", "grip:") + "lines:\nchecks: ~\n");
        assertThat(build.car().grip()).isNull();
        assertThat(build.lines()).isNull();
        assertThat(build.checks()).isNull();
    }

    @Test
    void toleratesByteOrderMarkAndWindowsLineEnds() {
        String text = "\uFEFF" + Texts.larkspur().replace("\n", "\r\n");
        assertThat(BuildFile.readUtf8(text.getBytes(StandardCharsets.UTF_8), Beside.NOTHING))
                .isInstanceOf(ReadOutcome.Usable.class);
        LocatedProblem problem =
                Texts.problems(text.replace("format: 1", "format: 3")).getFirst();
        assertThat(problem.line()).isEqualTo(1);
        assertThat(problem.column()).isEqualTo(9);
    }

    @Test
    void findsPlacesForLaterProblems() {
        Places places = ((ReadOutcome.Usable) BuildFile.read(Texts.larkspur())).places();
        assertThat(place(places, "front.pad_friction")).isEqualTo("17:17");
        assertThat(place(places, "front.pistons[0]")).isEqualTo("16:13");
        assertThat(place(places, "front.pistons[7]")).isEqualTo("16:3");
        assertThat(place(places, "pedal.travel_to_stop")).isEqualTo("20:1");
        assertThat(place(places, "car.load_cases[0].axle_lift.rise")).isEqualTo("9:7");
        assertThat(place(places, "lines.front.tube_length")).isEqualTo("1:1");
        assertThat(place(places, "")).isEqualTo("1:1");
    }

    private static String place(Places places, String path) {
        LocatedProblem located = places.locate(new Problem(path, "", "too small", "more"));
        return located.line() + ":" + located.column();
    }

    private static void same(
            @org.jspecify.annotations.Nullable Given given, double si, double tolerance, Origin origin, String path) {
        assertThat(given).isNotNull();
        if (given != null) {
            assertThat(given.si()).isCloseTo(si, within(1e-12));
            assertThat(given.quantity().tolerance()).isCloseTo(tolerance, within(1e-12));
            assertThat(given.origin()).isEqualTo(origin);
            assertThat(given.path()).isEqualTo(path);
        }
    }
}
