package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import org.brakewright.analysis.balance.ForceDiagram;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cars without valve, whose front share never changes: where they lock, and what they use of the grip. */
class FixedSplitTest {
    private static final double SIX_DIGITS = 5e-7;

    /**
     * Row A5, CONSTRUCTED (formula: R. Limpert, Brake Design and Safety, ch. 7; A. Day, Braking of Road Vehicles, ch. 3, from
     * memory): rear load share 0.46, height over wheelbase 0.22, rear force share 0.28 by the radii.
     */
    private static final WrittenCar PARABOLA = Cars.TWIN.with("""
            car.wheelbase: 2500 mm
            car.load_cases[0].front_axle: 540 kg
            car.load_cases[0].rear_axle: 460 kg
            car.load_cases[0].cg_height: 550 mm
            front.effective_radius: 144 mm
            rear.effective_radius: 56 mm
            """);

    /**
     * Row A6, PART VERIFIED, answers recomputed: UN R13-H Annex 5. 7.799 and 6.916 kN at 9.81 m/s2; h/E = 0.2; split 68/32.
     */
    private static final WrittenCar CURVES = Cars.TWIN
            .with("front.effective_radius: 136 mm\nrear.effective_radius: 64 mm")
            .with("car.load_cases[0].front_axle", 7799 / 9.81)
            .with("car.load_cases[0].rear_axle", 6916 / 9.81);

    @Test
    void theRearIsFirstFromTheCriticalDecelerationOn() {
        assertThat(PARABOLA.loadCase().criticalDecelerationG()).isCloseTo(0.818182, within(SIX_DIGITS));
        assertThat(PARABOLA.loadCase().rearFirst()).hasSize(1);
        assertThat(PARABOLA.loadCase().rearFirst().getFirst().toG()).isNull();
        assertThat(CURVES.loadCase().criticalDecelerationG()).isCloseTo(0.749983, within(SIX_DIGITS));
    }

    @Test
    void theFrontLimitsBelowAndTheRearAbove() {
        Lock low = locked(0.4);
        assertThat(low.axle()).isEqualTo(Lock.Axle.FRONT);
        assertThat(low.efficiency()).isCloseTo(0.85443, within(SIX_DIGITS));
        Lock high = locked(1.0);
        assertThat(high.axle()).isEqualTo(Lock.Axle.REAR);
        assertThat(high.efficiency()).isCloseTo(0.92, within(SIX_DIGITS));
    }

    @Test
    void bothLockTogetherAtTheCriticalGrip() {
        LoadCaseResult result = PARABOLA.with("car.grip", 9.0 / 11).loadCase();
        Lock lock = Objects.requireNonNull(result.gripLock());
        assertThat(lock.axle()).isEqualTo(Lock.Axle.BOTH);
        assertThat(lock.efficiency()).isCloseTo(1, within(1e-9));
        double allLocked = Rig.of(PARABOLA).braked(9.0 / 11).pedalForceN();
        assertThat(result.allLockedForceN()).isCloseTo(allLocked, withinPercentage(1e-9));
    }

    private static Lock locked(double grip) {
        Lock lock = Objects.requireNonNull(
                PARABOLA.with("car.grip", grip).loadCase().gripLock());
        assertThat(PARABOLA.loadCase().lock())
                .anySatisfy(row ->
                        assertThat(row.decelerationG()).isCloseTo(lock.decelerationG(), withinPercentage(1e-12)));
        return lock;
    }

    /** The explicit parabola of row A5, eliminated from the parametric one. */
    @Test
    void theIdealCurveIsTheExplicitParabola() {
        List<ForceDiagram.Point> ideal =
                PARABOLA.analysis().forceDiagrams().getFirst().ideal();
        assertThat(ideal).hasSizeGreaterThan(20).allSatisfy(point -> {
            double half = (1 - 0.46) / (2 * 0.22);
            double rear = Math.sqrt(half * half + point.front() / 0.22) - half - point.front();
            assertThat(point.rear()).isCloseTo(rear, within(1e-12));
        });
    }

    @Test
    void theInstalledCurveKeepsItsSplit() {
        assertThat(PARABOLA.analysis().forceDiagrams().getFirst().installed())
                .hasSizeGreaterThan(1)
                .allSatisfy(point ->
                        assertThat(point.rear()).isCloseTo(0.28 * (point.front() + point.rear()), within(1e-12)));
    }

    /** Row A5: the line of an axle at grip k meets the installed split at k times the efficiency. */
    @Test
    void theGripLinesPassThroughTheLockPoints() {
        for (ForceDiagram.GripLine line : PARABOLA.with("car.grip: 1.0")
                .analysis()
                .forceDiagrams()
                .getFirst()
                .gripLines()) {
            boolean front = line.axle() == Lock.Axle.FRONT;
            double z = line.grip()
                    * (front ? (1 - 0.46) / (1 - 0.28 - line.grip() * 0.22) : 0.46 / (0.28 + line.grip() * 0.22));
            double onLine = line.from().rear()
                    + (0.72 * z - line.from().front())
                            / (line.to().front() - line.from().front())
                            * (line.to().rear() - line.from().rear());
            assertThat(onLine).as(line.toString()).isCloseTo(0.28 * z, within(1e-12));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.15, 0.182142, 0.109092",
        "0.30, 0.345761, 0.234148",
        "0.50, 0.53968,  0.432436",
        "0.80, 0.788402, 0.825816"
    })
    void theAdhesionCurvesOfACarComeOut(double z, double front, double rear) {
        OperatingPoint point = Rig.of(CURVES).braked(z);
        assertThat(point.frontAdhesion()).isCloseTo(front, within(SIX_DIGITS));
        assertThat(point.rearAdhesion()).isCloseTo(rear, within(SIX_DIGITS));
        assertThat(point.efficiency()).isCloseTo(z / Math.max(front, rear), withinPercentage(5e-4));
    }

    /** The table at tenths of g is made of the same points. */
    @Test
    void theTableHoldsThePointsOfTheCurves() {
        assertThat(CURVES.loadCase().atDeceleration()).anySatisfy(point -> {
            assertThat(point.decelerationG()).isCloseTo(0.5, within(1e-9));
            assertThat(point.frontAdhesion()).isCloseTo(0.53968, within(SIX_DIGITS));
        });
    }
}
