package org.brakewright.app.report;

import java.util.List;
import java.util.Map;
import org.brakewright.analysis.EffortFor;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.BalanceCase;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.brake.DrumResult;
import org.brakewright.analysis.chain.PanicPush;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.feel.Feel;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.analysis.pedal.PedalState;
import org.brakewright.analysis.reservoir.DrainBack;
import org.brakewright.analysis.reservoir.ReservoirDemand;
import org.brakewright.analysis.setting.Advice;
import org.brakewright.analysis.shop.ShopState;
import org.brakewright.analysis.solution.Solution;
import org.brakewright.analysis.stop.Stop;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.StopFrom;
import org.jspecify.annotations.Nullable;

/**
 * Everything that {@code check --json} prints. Numbers are SI; keys are snake_case and end in their unit.
 *
 * @param resultFormat version of this form
 * @param name of the car
 * @param verdict state of the worst finding and one sentence
 * @param headline the results that the verdict stands on
 * @param findings worst first
 * @param pedalRatio pad travel over pushrod travel
 * @param grip tyre grip given or assumed
 * @param hardStop the hard stop of the heaviest load case; null when no push gives it
 * @param loadCases one result a load case
 * @param bar the balance bar; null with a tandem master
 * @param failures a circuit or the booster failed
 * @param weakened air in one circuit, all brakes hot
 * @param panicPush pressures of a frightened leg
 * @param effortFor efforts at the decelerations that published rules ask for
 * @param stopsFrom stops from the speeds that published tests use
 * @param balanceCases the balance in every case of load, pads, air and engine
 * @param advice best setting and other layouts; null where they were not asked for
 * @param ledger assumptions, heaviest first
 * @param drums every drum of the car
 * @param parking the parking brake; null when not given
 * @param reservoirs fluid held against fluid that wear takes, one a circuit
 * @param drainBack lines at rest, front and rear
 * @param pedal the pedal through its stroke
 * @param feel pedal force against travel as assumed, as firm and as soft as it may be
 * @param solution how well pedal, bar, masters and lines agree in what is told
 * @param clutch the clutch; null when not given
 * @param heat how hot the brakes get; null when no schedule is given
 * @param stopsOverTime followed over time; empty when none is asked for
 * @param shop flat patterns and saddles; null when nothing is folded or joined
 * @param lines tubes, hoses, joints, cuts, air and bleeding; null when no routes are told
 * @param mount movement, stress, fasteners, endurance and variants of what carries the brake pedal; null when not told
 * @param footwell the pedals side by side; null when not told
 */
public record Result(
        int resultFormat,
        String name,
        VerdictText verdict,
        Headline headline,
        List<FindingText> findings,
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
        List<Assumed> ledger,
        List<DrumResult> drums,
        @Nullable ParkingState parking,
        List<ReservoirDemand> reservoirs,
        List<DrainBack> drainBack,
        PedalState pedal,
        Feel feel,
        Solution solution,
        List<BalanceCase> balanceCases,
        @Nullable Advice advice,
        @Nullable ClutchState clutch,
        @Nullable HeatState heat,
        List<Stop> stopsOverTime,
        @Nullable ShopState shop,
        @Nullable LinesState lines,
        @Nullable MountState mount,
        @Nullable FootwellState footwell) {

    /**
     * The verdict.
     *
     * @param state stop, caution, cannot_tell or fine
     * @param sentence for people
     */
    public record VerdictText(String state, String sentence) {}

    /**
     * A finding.
     *
     * @param key name of the rule
     * @param subject what it is about, may be empty
     * @param state stop, caution, cannot_tell or fine
     * @param sentence for people
     * @param found judged number; null when there is none
     * @param limit its limit; null when there is none
     * @param whose whose limit it is; null when there is none
     * @param tag how well the limit is known; null when there is none
     * @param cure smallest single change found; null when there is none
     * @param inputs key paths of the inputs that matter most
     */
    public record FindingText(
            String key,
            String subject,
            String state,
            String sentence,
            @Nullable Figure found,
            @Nullable Figure limit,
            @Nullable String whose,
            @Nullable String tag,
            @Nullable CureText cure,
            List<String> inputs) {}

    /**
     * A number with its SI unit.
     *
     * @param value SI
     * @param dimension kind of quantity
     */
    public record Figure(double value, String dimension) {}

    /**
     * A cure.
     *
     * @param sentence for people
     * @param becomes state of the finding after it
     * @param worse keys of findings that get worse by it
     * @param values new SI values by key path
     */
    public record CureText(String sentence, String becomes, List<String> worse, Map<String, Double> values) {}

    /**
     * An assumption.
     *
     * @param path key path
     * @param title plain name
     * @param value SI
     * @param low lower end of its range, SI
     * @param high upper end, SI
     * @param dimension kind of quantity
     * @param basis why
     * @param tag how well it is known
     * @param byBuilder whether the builder wrote it as assumed
     * @param atLow headline at the lower end
     * @param atHigh headline at the upper end
     */
    public record Assumed(
            String path,
            String title,
            double value,
            double low,
            double high,
            String dimension,
            String basis,
            String tag,
            boolean byBuilder,
            Headline atLow,
            Headline atHigh) {}
}
