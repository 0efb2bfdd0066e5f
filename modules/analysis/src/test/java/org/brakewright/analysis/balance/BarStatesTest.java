package org.brakewright.analysis.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.kernel.lever.FailedBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.junit.jupiter.api.Test;

/** Row B15 of the check values (statics of a three-force bar) through the whole car, and closed forms. */
class BarStatesTest {
    /** Arms of 27 and 36.5 mm. */
    private static final WrittenCar BAR = Cars.TWIN.with("""
            apply.balance_bar.clevis_spacing: 63.5 mm
            apply.balance_bar.master_spacing: 63.5 mm
            apply.balance_bar.offset: 4.75 mm
            """);

    /** Four pad faces of 50 mm pistons fill masters of 20 mm: rods travel 11 and 8 mm. */
    private static final WrittenCar TILTED =
            BAR.with("front.running_clearance: 0.44 mm\nrear.running_clearance: 0.32 mm");

    @Test
    void setBackPinsShiftTheShareOfATiltedBar() {
        BarPose pose = Objects.requireNonNull(
                TILTED.with("apply.balance_bar.pin_set_back: 6 mm").bar().atHardStop());
        assertThat(Math.toDegrees(pose.tiltRad())).isCloseTo(2.70488, withinPercentage(0.01));
        assertThat(pose.frontShare()).isCloseTo(0.570339, withinPercentage(0.001));
    }

    /** Closed form: a square bar on parallel rods keeps its share at any tilt; brakes of 2 to 1 per pressure. */
    @Test
    void aLongerRodTiltsTheBarAndATurnMovesTheBalance() {
        RodLengthEffect effect = Objects.requireNonNull(TILTED.bar().rodLength());
        assertThat(effect.tiltChangeRad()).isCloseTo(Math.atan(4 / 63.5) - Math.atan(3 / 63.5), within(1e-6));
        assertThat(effect.shareChange()).isCloseTo(0, within(1e-9));
        assertThat(effect.shareChangeByTurn())
                .isCloseTo(forceShare((36.5 + 1) / 63.5) - forceShare(36.5 / 63.5), within(1e-9));
    }

    private static double forceShare(double pushShare) {
        return 2 * pushShare / (2 * pushShare + 1 - pushShare);
    }

    @Test
    void withSetBackPinsRodLengthDoesMoveTheBalanceALittle() {
        RodLengthEffect effect = Objects.requireNonNull(
                TILTED.with("apply.balance_bar.pin_set_back: 6 mm").bar().rodLength());
        assertThat(effect.shareChange()).isNegative();
        assertThat(Math.abs(effect.shareChange())).isLessThan(0.2 * effect.shareChangeByTurn());
    }

    @Test
    void restLeadIsTheTiltAtRestAndCountsAtTheHardStop() {
        BarState bar = TILTED.with("apply.balance_bar.rest_lead: -3 mm").bar();
        assertThat(bar.atRest().tiltRad()).isCloseTo(Math.atan(-3 / 63.5), within(1e-12));
        assertThat(bar.tiltRad()).isCloseTo(0, within(1e-5));
    }

    /** The bar meets its 0.2 rad before a master of 28 mm is at its end; equal brakes and a centred bar are mirrored. */
    @Test
    void aFailedCircuitTiltsTheBarToItsLimit() {
        BarState bar = Cars.TWIN.bar();
        FailedPose front = Objects.requireNonNull(bar.frontFailed());
        FailedPose rear = Objects.requireNonNull(bar.rearFailed());
        assertThat(front.end()).isEqualTo(FailedBar.Stop.ARTICULATION);
        assertThat(front.pose().tiltRad()).isCloseTo(0.2, within(1e-9));
        assertThat(rear.pose().tiltRad()).isCloseTo(-0.2, within(1e-9));
        assertThat(front.pose().bearingM()).isCloseTo(rear.pose().bearingM(), within(1e-12));
    }

    @Test
    void aShortMasterBottomsBeforeTheBarBinds() {
        FailedPose front = Objects.requireNonNull(
                Cars.TWIN.with("apply.front_master.stroke: 9 mm").bar().frontFailed());
        assertThat(front.end()).isEqualTo(FailedBar.Stop.MASTER_BOTTOMED);
        assertThat(front.pose().frontM()).isCloseTo(9e-3, within(1e-12));
    }

    /**
     * Statics of a rigid bar: with the front rod open it turns until its largest tilt, counted from square, so a lead of
     * 3 mm at rest leaves that rod 3 mm less to run and the rear one 3 mm more.
     */
    @Test
    void aLeadAtRestTakesFromTheRunOfItsOwnRod() {
        BarState bar = Cars.TWIN.with("apply.balance_bar.rest_lead: 3 mm").bar();
        FailedPose front = Objects.requireNonNull(bar.frontFailed());
        FailedPose rear = Objects.requireNonNull(bar.rearFailed());
        double run = 0.060 * Math.tan(0.2);
        assertThat(front.pose().tiltRad()).isCloseTo(0.2, within(1e-9));
        assertThat(rear.pose().tiltRad()).isCloseTo(-0.2, within(1e-9));
        assertThat(front.pose().frontM() - front.pose().rearM()).isCloseTo(run - 0.003, within(1e-9));
        assertThat(rear.pose().rearM() - rear.pose().frontM()).isCloseTo(run + 0.003, within(1e-9));
    }

    /** Rods that lean by 4 in 90 swing as the bar turns; it still ends at its largest tilt. */
    @Test
    void leaningRodsEndAtTheLargestTiltToo() {
        BarState bar = Cars.TWIN.with("apply.balance_bar.master_spacing: 56 mm").bar();
        assertThat(Objects.requireNonNull(bar.frontFailed()).pose().tiltRad()).isCloseTo(0.2, within(1e-9));
        assertThat(Objects.requireNonNull(bar.rearFailed()).pose().tiltRad()).isCloseTo(-0.2, within(1e-9));
    }

    /** Every pose that is drawn keeps clevises apart and rods as long as they are, but for what the first order leaves. */
    @Test
    void theOutlineKeepsBarAndRodsRigid() {
        WrittenCar car = TILTED.with("apply.balance_bar.pin_set_back: 6 mm\napply.balance_bar.master_spacing: 69.5 mm");
        ResolvedApply.Twin twin = (ResolvedApply.Twin) car.resolved().apply();
        BarState bar = car.bar();
        BarOutline rest = BarOutline.of(twin.bar(), bar.atRest());
        for (BarPose pose : List.of(
                Objects.requireNonNull(bar.atHardStop()),
                Objects.requireNonNull(bar.frontFailed()).pose(),
                Objects.requireNonNull(bar.rearFailed()).pose())) {
            BarOutline outline = BarOutline.of(twin.bar(), pose);
            assertThat(distance(outline.front().clevis(), outline.rear().clevis()))
                    .isCloseTo(0.0635, within(1e-9));
            assertThat(length(outline.front())).isCloseTo(length(rest.front()), within(0.3e-3));
            assertThat(length(outline.rear())).isCloseTo(length(rest.rear()), within(0.3e-3));
        }
    }

    private static double length(BarOutline.Rod rod) {
        return distance(rod.clevis(), rod.socket());
    }

    private static double distance(BarOutline.Spot from, BarOutline.Spot to) {
        return Math.hypot(to.acrossM() - from.acrossM(), to.aheadM() - from.aheadM());
    }
}
