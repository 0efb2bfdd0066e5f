package org.brakewright.analysis.ledger;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.heat.HotCars;
import org.junit.jupiter.api.Test;

/** What each assumption moves. */
class LedgerTest {
    /** Hardly anything written but the parts. */
    private static final WrittenCar UNMEASURED = Cars.TWIN
            .without("lines")
            .without("fluid")
            .without("apply.balance_bar")
            .without("car.load_cases[0].cg_height")
            .without("front.pad_friction")
            .without("rear.pad_friction")
            .without("rear.running_clearance")
            .without("pedal.efficiency")
            .without("pedal.free_play");

    private static List<LedgerEntry> ledger(WrittenCar car) {
        return Ledger.weigh(car.build(), car.resolved(), car.ledger(), Headline.of(car.analysis()));
    }

    @Test
    void theHeaviestStandsFirst() {
        List<LedgerEntry> entries = ledger(UNMEASURED);
        assertThat(entries).hasSizeGreaterThan(20);
        assertThat(entries)
                .isSortedAccordingTo(
                        Comparator.comparingDouble(LedgerEntry::weight).reversed());
    }

    @Test
    void everyEndOfARangeIsTheCarWithThatValue() {
        for (LedgerEntry entry : ledger(UNMEASURED)) {
            String path = entry.assumption().path();
            assertThat(entry.atLow())
                    .as(path)
                    .isEqualTo(Headline.of(Analyse.analyse(
                            UNMEASURED.resolved(path, entry.assumption().low()))));
            assertThat(entry.atHigh())
                    .as(path)
                    .isEqualTo(Headline.of(Analyse.analyse(
                            UNMEASURED.resolved(path, entry.assumption().high()))));
        }
    }

    /** The end of a range is the same as the builder writing that value. */
    @Test
    void anEndOfARangeIsWhatTheBuilderWouldGetByWritingIt() {
        for (LedgerEntry entry : ledger(UNMEASURED)) {
            String path = entry.assumption().path();
            WrittenCar written = UNMEASURED.with(path, entry.assumption().high());
            assertThat(entry.atHigh()).as(path).isEqualTo(Headline.of(written.analysis()));
        }
    }

    /** Effort goes with 1/efficiency, 0.78 to 0.92 around 0.85, and nothing else moves: closed form. */
    @Test
    void theWeightIsTheMovementOverTheBuildersLimit() {
        WrittenCar car = Cars.TWIN.without("pedal.efficiency").with("intent.most_effort: 1500 N");
        double effort = car.hardStop().point().pedalForceN();
        LedgerEntry entry = ledger(car).getFirst();
        assertThat(entry.assumption().path()).isEqualTo("pedal.efficiency");
        assertThat(entry.atLow().effortN()).isCloseTo(effort * 0.85 / 0.78, withinPercentage(1e-9));
        double moved = effort * (0.85 / 0.78 - 0.85 / 0.92);
        assertThat(entry.weight()).isCloseTo(moved / 1500, withinPercentage(1e-9));
    }

    @Test
    void aLimitThatLiesWithinTheRangeWeighsOneMore() {
        WrittenCar car = Cars.TWIN.without("pedal.efficiency");
        double effort = car.hardStop().point().pedalForceN();
        double moved = effort * (0.85 / 0.78 - 0.85 / 0.92);
        LedgerEntry entry = ledger(car.with("intent.most_effort", effort)).getFirst();
        assertThat(entry.weight()).isCloseTo(1 + moved / effort, withinPercentage(1e-9));
    }

    @Test
    void theHeadlineHoldsTheLeastOfLoadCasesAndFailures() {
        WrittenCar car = Cars.TWIN.with("""
                car.load_cases[1].name: nose heavy
                car.load_cases[1].front_axle: 550 kg
                car.load_cases[1].rear_axle: 450 kg
                car.load_cases[1].cg_height: 480 mm
                """);
        Headline headline = Headline.of(car.analysis());
        // Row A5's closed form (psi - Phi)/chi for both load cases; 2,000 N of the rear for the worse failure.
        assertThat(headline.criticalDecelerationG()).isCloseTo((0.45 - 1 / 3.0) / 0.2, withinPercentage(1e-9));
        assertThat(headline.failedDecelerationG()).isCloseTo(2000 / 9806.65, withinPercentage(1e-9));
    }

    private static final WrittenCar HOT = HotCars.STOP
            .without("heat.ambient")
            .without("heat.rotating_share")
            .without("heat.onward_speed")
            .without("heat.front.rotor_mass")
            .without("heat.front.friction_curve")
            .without("heat.front.rotor_limit")
            .without("heat.rear.piston_heat_transfer")
            .without("pedal.efficiency");

    @Test
    void whatIsAssumedOfHeatMovesTemperaturesAndTheEffortHot() {
        List<LedgerEntry> entries = ledger(HOT).stream()
                .filter(entry -> entry.assumption().path().startsWith("heat."))
                .toList();
        assertThat(entries).hasSize(7);
        for (LedgerEntry entry : entries) {
            String path = entry.assumption().path();
            HeatHeadline low = Headline.of(Analyse.analyse(
                            HOT.resolved(path, entry.assumption().low())))
                    .heat();
            assertThat(entry.atLow().heat()).as(path).isNotNull().isEqualTo(low);
        }
    }

    /** A rotor's mean rise goes with 1/mass, and the face stands some way above it in both: the lighter one gets hotter. */
    @Test
    void aLighterRotorGetsHotterAndWeighsByItsRiseOverTheRiseAllowed() {
        WrittenCar car = HotCars.STOP.without("heat.front.rotor_mass");
        LedgerEntry entry = ledger(car).stream()
                .filter(each -> each.assumption().path().equals("heat.front.rotor_mass"))
                .findFirst()
                .orElseThrow();
        HeatHeadline low = requireNonNull(entry.atLow().heat());
        HeatHeadline high = requireNonNull(entry.atHigh().heat());
        assertThat(low.facePeakK()).isGreaterThan(high.facePeakK());
        double allowed = 600 - 20;
        assertThat(entry.weight()).isCloseTo((low.facePeakK() - high.facePeakK()) / allowed, withinPercentage(1e-6));
    }

    @Test
    void heatIsNotFollowedAgainForWhatHeatDoesNotKnow() {
        LedgerEntry entry = ledger(HOT).stream()
                .filter(each -> each.assumption().path().equals("pedal.efficiency"))
                .findFirst()
                .orElseThrow();
        assertThat(entry.atLow().heat()).isNull();
        assertThat(entry.atLow().effortN()).isNotNull();
    }
}
