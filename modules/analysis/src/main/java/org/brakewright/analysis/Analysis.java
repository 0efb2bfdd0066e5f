package org.brakewright.analysis;

import java.util.List;
import org.brakewright.analysis.balance.BalanceCase;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.balance.ForceDiagram;
import org.brakewright.analysis.brake.DrumResult;
import org.brakewright.analysis.chain.PanicPush;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.analysis.pedal.PedalState;
import org.brakewright.analysis.reservoir.DrainBack;
import org.brakewright.analysis.reservoir.ReservoirDemand;
import org.brakewright.analysis.setting.Advice;
import org.brakewright.analysis.shop.ShopState;
import org.brakewright.analysis.stop.Stop;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.StopFrom;
import org.jspecify.annotations.Nullable;

/**
 * Every number that follows from a build. Component names carry their unit; published as JSON in snake_case.
 *
 * @param pedalRatio pad travel over pushrod travel
 * @param grip tyre grip assumed or given
 * @param hardStop the hard stop of the heaviest load case; null when no pedal force gives it
 * @param loadCases one result a load case
 * @param bar the balance bar; null with a tandem master
 * @param failures a circuit or the booster failed
 * @param weakened air in one circuit, all brakes hot
 * @param panicPush pressures of a frightened leg
 * @param effortFor efforts of the heaviest load case at the decelerations that published rules ask for
 * @param stopsFrom stops from the speeds that published tests use
 * @param forceDiagrams rear against front brake force, one a load case
 * @param drums every drum of the car
 * @param parking the parking brake; null when not given
 * @param reservoirs fluid held against fluid that wear takes, one a circuit
 * @param drainBack lines at rest, front and rear
 * @param pedal the pedal through its stroke
 * @param heat how hot the brakes get; null when no schedule is given, and while many variants are tried
 * @param balanceCases the balance in every case of load, pads, air and engine; empty where only judgements are wanted
 * @param advice best settings and other layouts; null where they were not asked for
 * @param clutch the clutch; null when not given
 * @param stops followed over time; empty when not asked for, and until they were followed
 * @param shop flat patterns and saddles of what is folded and joined; null when not given
 * @param lines tubes, hoses and joints where routes are told; null when not given
 * @param mount what carries the brake pedal; null when not told, and while many variants are tried
 * @param footwell the pedals side by side; null when not told, and while many variants are tried
 */
public record Analysis(
        double pedalRatio,
        double grip,
        @Nullable HardStop hardStop,
        List<LoadCaseResult> loadCases,
        @Nullable BarState bar,
        List<Failure> failures,
        List<Failure> weakened,
        PanicPush panicPush,
        List<EffortFor> effortFor,
        List<StopFrom> stopsFrom,
        List<ForceDiagram> forceDiagrams,
        List<DrumResult> drums,
        @Nullable ParkingState parking,
        List<ReservoirDemand> reservoirs,
        List<DrainBack> drainBack,
        PedalState pedal,
        @Nullable HeatState heat,
        List<BalanceCase> balanceCases,
        @Nullable Advice advice,
        @Nullable ClutchState clutch,
        List<Stop> stops,
        @Nullable ShopState shop,
        @Nullable LinesState lines,
        @Nullable MountState mount,
        @Nullable FootwellState footwell) {

    /** The same with stops followed over time. */
    public Analysis with(List<Stop> followed) {
        return new Analysis(
                pedalRatio,
                grip,
                hardStop,
                loadCases,
                bar,
                failures,
                weakened,
                panicPush,
                effortFor,
                stopsFrom,
                forceDiagrams,
                drums,
                parking,
                reservoirs,
                drainBack,
                pedal,
                heat,
                balanceCases,
                advice,
                clutch,
                followed,
                shop,
                lines,
                mount,
                footwell);
    }

    /**
     * Effort of the heaviest load case at one of the decelerations of {@link #effortFor}.
     *
     * @param decelerationG g
     * @return N, infinite when no push gives it
     * @throws IllegalArgumentException when that deceleration is not among them
     */
    public double effortAt(double decelerationG) {
        for (EffortFor effort : effortFor) {
            if (Math.abs(effort.decelerationG() - decelerationG) < 1e-9) {
                Double force = effort.pedalForceN();
                return force == null ? Double.POSITIVE_INFINITY : force;
            }
        }
        throw new IllegalArgumentException("no effort was computed at " + decelerationG + " g");
    }
}
