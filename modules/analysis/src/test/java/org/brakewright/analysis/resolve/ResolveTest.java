package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Leaves;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;

/** What is missing is assumed openly, and nothing is assumed in silence. */
class ResolveTest {
    private static final String CAR = """
            format: 1
            name: Dunlin
            car.wheelbase: 2400 mm
            car.front_tyre_radius: 300 mm
            car.rear_tyre_radius: 310 mm
            car.load_cases[0].name: driver
            car.load_cases[0].front_axle: 400 kg
            car.load_cases[0].rear_axle: 420 kg
            front.kind: disc
            front.caliper: sliding
            front.pistons[0]: 48 mm
            front.effective_radius: 105 mm
            rear.kind: drum
            rear.shoes: leading_trailing
            rear.drum_radius: 100 mm
            rear.wheel_cylinder: 19 mm
            intent.use: road
            """;

    /** Only what has to be written, with masters under a bar and a linkage. */
    private static final WrittenCar BARE_TWIN = WrittenCar.of(CAR).with("""
            pedal.linkage.pad_arm: 250 mm
            pedal.linkage.pushrod_arm: 50 mm
            apply.kind: twin_masters
            apply.front_master.bore: 17 mm
            apply.rear_master.bore: 19 mm
            """);

    /** Only what has to be written, with a boosted tandem and a valve. */
    private static final WrittenCar BARE_TANDEM = WrittenCar.of(CAR).with("""
            pedal.ratio: 4
            apply.kind: tandem_master
            apply.bore: 22 mm
            apply.front_fed_by: primary
            apply.booster.ratio: 3
            apply.booster.diaphragm_diameter: 200 mm
            apply.proportioning_valve.knee: 2 MPa
            apply.proportioning_valve.slope: 0.4
            """);

    private static final List<String> WRITTEN = List.of(
            "car.wheelbase",
            "car.front_tyre_radius",
            "car.rear_tyre_radius",
            "car.load_cases[0].front_axle",
            "car.load_cases[0].rear_axle",
            "front.pistons[0]",
            "front.effective_radius",
            "rear.drum_radius",
            "rear.wheel_cylinder");

    private static final List<String> WRITTEN_TWIN =
            and("pedal.linkage.pad_arm", "apply.front_master.bore", "apply.rear_master.bore");

    private static final List<String> WRITTEN_TANDEM = and(
            "pedal.ratio",
            "apply.bore",
            "apply.booster.ratio",
            "apply.booster.diaphragm_diameter",
            "apply.proportioning_valve.knee",
            "apply.proportioning_valve.slope");

    private static final List<WrittenCar> BARE = List.of(BARE_TWIN, BARE_TANDEM);

    /** Values that by their nature stand in two places, or set another default with them. */
    private static final Map<String, Set<String>> TWICE = Map.of(
            "fluid.bulk_modulus", Set.of(".frontCircuit.bulkModulus", ".rearCircuit.bulkModulus"),
            "fluid.free_air", Set.of(".frontCircuit.freeAir", ".rearCircuit.freeAir"),
            "apply.primary_stroke", Set.of(".apply.primaryStroke", ".apply.master.stroke"),
            "apply.secondary_stroke", Set.of(".apply.secondaryStroke", ".apply.master.stroke"),
            "apply.balance_bar.clevis_spacing",
                    Set.of(".apply.bar.clevisSpacing", ".apply.bar.offsetLimit", ".apply.bar.stance.masterSpacing"));

    /** "hard_stop" of a written path and "hardStopG" of a resolved one in the same spelling. */
    private static String lastWord(String path) {
        return path.substring(path.lastIndexOf('.') + 1)
                .replace("_", "")
                .replaceFirst("G$", "")
                .toLowerCase(Locale.ROOT);
    }

    private static List<String> and(String... paths) {
        return Stream.concat(WRITTEN.stream(), Stream.of(paths)).toList();
    }

    @Test
    void everyAssumptionLiesWithinItsRangeAndSaysWhy() {
        for (WrittenCar car : BARE) {
            assertThat(car.ledger()).hasSizeGreaterThan(30).allSatisfy(each -> {
                assertThat(each.low()).isLessThanOrEqualTo(each.value());
                assertThat(each.value()).isLessThanOrEqualTo(each.high());
                assertThat(each.low()).as("a range").isLessThan(each.high());
                assertThat(each.basis()).isNotBlank();
                assertThat(each.byBuilder()).isFalse();
                assertThat(each.title())
                        .isEqualTo(FieldCatalogue.at(each.path()).title());
            });
            assertThat(car.ledger().stream().map(Assumption::path)).doesNotHaveDuplicates();
        }
    }

    /** The ledger may not assume what the builder may not write. */
    @Test
    void everyRangeLiesWithinWhatTheFileAccepts() {
        for (WrittenCar car : BARE) {
            assertThat(car.ledger()).allSatisfy(each -> {
                assertThat(each.low())
                        .as(each.path())
                        .isGreaterThanOrEqualTo(FieldCatalogue.at(each.path()).least());
                assertThat(each.high())
                        .as(each.path())
                        .isLessThanOrEqualTo(FieldCatalogue.at(each.path()).most());
            });
        }
    }

    @Test
    void anOverrideChangesThatValueAndNoOther() {
        for (WrittenCar car : BARE) {
            for (Assumption each : car.ledger()) {
                Set<String> changed = Leaves.different(car.resolved(), car.resolved(each.path(), other(each)));
                Set<String> twice = TWICE.get(each.path());
                if (twice == null) {
                    assertThat(changed).as(each.path()).hasSize(1);
                    if (!each.path().startsWith("pedal.linkage")) { // an angle becomes a ratio
                        assertThat(lastWord(each.path()))
                                .endsWith(lastWord(changed.iterator().next()));
                    }
                } else {
                    assertThat(changed).as(each.path()).isEqualTo(twice);
                }
            }
        }
    }

    private static double other(Assumption each) {
        return each.high() == each.value() ? each.low() : each.high();
    }

    /** Whatever number a bare car is computed with follows from a value that is written or stands in the ledger. */
    @Test
    void noNumberIsAssumedInSilence() {
        for (WrittenCar car : BARE) {
            Set<String> reached = new TreeSet<>();
            for (String path : car == BARE_TWIN ? WRITTEN_TWIN : WRITTEN_TANDEM) {
                reached.addAll(Leaves.different(car.resolved(), car.resolved(path, 0.777)));
            }
            for (Assumption each : car.ledger()) {
                reached.addAll(Leaves.different(car.resolved(), car.resolved(each.path(), other(each))));
            }
            assertThat(reached).containsAll(Leaves.numbers(car.resolved()));
        }
    }

    @Test
    void aCarOfWhichAllIsWrittenAssumesNothing() {
        assertThat(Cars.TWIN.ledger()).isEmpty();
        assertThat(Cars.TANDEM.with(Cars.BOOSTER).ledger()).isEmpty();
    }

    @Test
    void leavingOneValueOutPutsThatOneIntoTheLedger() {
        for (String path : List.of(
                "car.grip",
                "front.pad_friction",
                "rear.running_clearance",
                "pedal.free_play",
                "fluid.free_air",
                "lines.rear.hose_length",
                "apply.front_master.stroke",
                "apply.balance_bar.offset",
                "intent.hard_stop")) {
            assertThat(Cars.TWIN.without(path).ledger())
                    .extracting(Assumption::path)
                    .containsExactly(path);
        }
    }

    /** The height follows the wheelbase: 0.19 of it, 0.15 to 0.24 (estimate, no source). */
    @Test
    void theHeightIsAssumedByTheWheelbase() {
        Assumption height = Cars.TWIN
                .without("car.load_cases[0].cg_height")
                .with("car.wheelbase: 3000 mm")
                .ledger()
                .getFirst();
        assertThat(height.value()).isCloseTo(0.57, within(1e-12));
        assertThat(height.low()).isCloseTo(0.45, within(1e-12));
        assertThat(height.high()).isCloseTo(0.72, within(1e-12));
    }

    @Test
    void aGuessOfTheBuilderStandsInTheLedgerWithHisRange() {
        Assumption guess =
                Cars.TWIN.assumed("front.pad_friction", "0.42 +- 0.02").ledger().getFirst();
        assertThat(guess.byBuilder()).isTrue();
        assertThat(guess.value()).isEqualTo(0.42);
        assertThat(guess.low()).isCloseTo(0.40, within(1e-12));
        assertThat(guess.high()).isCloseTo(0.44, within(1e-12));
        assertThat(guess.tag()).isEqualTo(Tag.BUILDERS_CHOICE);
    }

    @Test
    void aGuessWithoutRangeTakesTheUsualOneWidenedToHoldIt() {
        Assumption guess =
                Cars.TWIN.assumed("front.pad_friction", "0.5").ledger().getFirst();
        assertThat(guess.value()).isEqualTo(0.5);
        assertThat(guess.low()).isLessThan(0.5);
        assertThat(guess.high()).isEqualTo(0.5);
    }
}
