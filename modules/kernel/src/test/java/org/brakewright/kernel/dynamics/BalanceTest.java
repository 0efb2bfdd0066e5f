package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BalanceTest {
    /** 1e-6 relative: agreement wanted with an independent computation. */
    private static final double RECOMPUTED = 1e-4;

    /**
     * Row A5, CONSTRUCTED: closed form of R. Limpert, Brake Design and Safety, ch. 7; A. Day, Braking of Road Vehicles, ch. 3
     * (from memory).
     */
    private static final AxleLoads A5 = Cars.ofRatios(0.46, 0.22);

    private static final double A5_REAR_SHARE = 0.28;

    /**
     * Row A6, PART VERIFIED: UN Regulation 13-H Annex 5 and Directive 71/320/EEC (formula from memory), answers recomputed;
     * forces in kN, wheelbase 1.
     */
    private static final AxleLoads A6 = new AxleLoads(7.799, 6.916, 1, 0.20);

    @ParameterizedTest
    @CsvSource({"0.2, 0.1168, 0.0832", "0.5, 0.325, 0.175", "0.8, 0.5728, 0.2272", "1.0, 0.76, 0.24"})
    void parametricAndExplicitParabolaAgreeWithA5(double decelerationG, double front, double rear) {
        IdealCurve ideal = new IdealCurve(A5);
        assertThat(ideal.frontForce(decelerationG)).isCloseTo(front, withinPercentage(RECOMPUTED));
        assertThat(ideal.rearForce(decelerationG)).isCloseTo(rear, withinPercentage(RECOMPUTED));
        assertThat(ideal.rearForceAtFront(front)).isCloseTo(rear, within(1e-15));
        assertThat(ideal.decelerationAtFrontForce(front)).isCloseTo(decelerationG, within(1e-15));
        assertThat(ideal.rearForceShare(decelerationG)).isCloseTo(rear / decelerationG, withinPercentage(RECOMPUTED));
    }

    @Test
    void parabolaOfA5HasItsVertexAtHalfOfLiftOff() {
        assertThat(new IdealCurve(A5).vertexDecelerationG())
                .isCloseTo(1.0454545454545454, withinPercentage(RECOMPUTED));
        assertThat(A5.liftOffDecelerationG()).isCloseTo(2 * 1.0454545454545454, withinPercentage(RECOMPUTED));
    }

    @Test
    void splitOfA5IsCriticalWhereItMeetsTheParabola() {
        double critical = FixedSplit.criticalDecelerationG(A5_REAR_SHARE, A5);
        assertThat(critical).isCloseTo(0.8181818181818181, withinPercentage(RECOMPUTED));
        assertThat(FixedSplit.rearForceShareFor(critical, A5)).isCloseTo(A5_REAR_SHARE, within(1e-15));
        assertThat(WheelLock.fixedSplit(A5_REAR_SHARE, A5, critical).first()).isEqualTo(LockPoint.First.BOTH);
    }

    @ParameterizedTest
    @CsvSource({"0.4, 0.8544303797468354, 1.25", "0.8181818181818181, 1, 1", "1.0, 1.08, 0.92"})
    void efficienciesOfA5(double grip, double frontLimited, double rearLimited) {
        assertThat(FixedSplit.frontLimitedEfficiency(A5_REAR_SHARE, A5, grip).orElseThrow())
                .isCloseTo(frontLimited, withinPercentage(RECOMPUTED));
        assertThat(FixedSplit.rearLimitedEfficiency(A5_REAR_SHARE, A5, grip))
                .isCloseTo(rearLimited, withinPercentage(RECOMPUTED));
        LockPoint lock = WheelLock.fixedSplit(A5_REAR_SHARE, A5, grip);
        assertThat(lock.efficiency()).isCloseTo(Math.min(frontLimited, rearLimited), withinPercentage(RECOMPUTED));
    }

    @Test
    void frontOfA5LocksFirstOnPoorRoadsAndRearOnGoodOnes() {
        assertThat(WheelLock.fixedSplit(A5_REAR_SHARE, A5, 0.4).first()).isEqualTo(LockPoint.First.FRONT);
        assertThat(WheelLock.fixedSplit(A5_REAR_SHARE, A5, 1.0).first()).isEqualTo(LockPoint.First.REAR);
    }

    @ParameterizedTest
    @CsvSource({
        "0.15, 0.18214175196742896, 0.10909175155030079",
        "0.30, 0.3457607205795966, 0.23414828197775606",
        "0.50, 0.5396796289304784, 0.4324364037101662",
        "0.80, 0.7884019146295822, 0.8258155033321641"
    })
    void utilizationCurvesOfA6(double decelerationG, double front, double rear) {
        double force = decelerationG * A6.weight();
        assertThat(Adhesion.front(0.68 * force, A6, decelerationG)).isCloseTo(front, withinPercentage(RECOMPUTED));
        assertThat(Adhesion.rear(0.32 * force, A6, decelerationG)).isCloseTo(rear, withinPercentage(RECOMPUTED));
    }

    @Test
    void curvesOfA6CrossAtTheCriticalDeceleration() {
        assertThat(FixedSplit.criticalDecelerationG(0.32, A6))
                .isCloseTo(0.7499830105334693, withinPercentage(RECOMPUTED));
    }

    /**
     * Limit lines of standards section 3.4, derived there from R13-H 0.70 (from memory), 71/320 0.85 (read in part) and
     * z = 0.9 k: the greatest k at a given z. A split laid on the line must lock at that z on a road of that k. The table
     * prints k to 0.001.
     */
    @ParameterizedTest
    @CsvSource({
        "0.20, 0.343",
        "0.30, 0.486",
        "0.50, 0.771",
        "0.20, 0.318",
        "0.30, 0.435",
        "0.50, 0.671",
        "0.61, 0.800",
        "0.20, 0.222",
        "0.30, 0.333",
        "0.50, 0.556",
        "0.61, 0.678"
    })
    void aSplitOnALimitLineLocksThere(double decelerationG, double grip) {
        double rearShare = grip * A5.rear(decelerationG) / (decelerationG * A5.weight());
        LockPoint lock = WheelLock.fixedSplit(rearShare, A5, grip);
        assertThat(lock.first()).isEqualTo(LockPoint.First.REAR);
        assertThat(lock.decelerationG()).isCloseTo(decelerationG, within(1e-12));
        double rearForce = rearShare * decelerationG * A5.weight();
        assertThat(Adhesion.rear(rearForce, A5, decelerationG)).isCloseTo(grip, within(1e-12));
    }

    @Test
    void refusesACarThatCannotStand() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AxleLoads(5000, -1, 2.5, 0.5))
                .withMessageContaining("rearStatic")
                .withMessageContaining("-1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AxleLoads(5000, 4000, 2.5, Double.POSITIVE_INFINITY))
                .withMessageContaining("cgHeight");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FixedSplit.criticalDecelerationG(1.01, A5))
                .withMessageContaining("rearForceShare");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Adhesion.rear(1, A5, A5.liftOffDecelerationG() + 0.01))
                .withMessageContaining("rearForce");
    }
}
