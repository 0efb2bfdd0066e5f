package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.intent.Use;
import org.brakewright.model.proof.Checks;

/**
 * One car, complete and in SI; what the builder did not give has been assumed openly.
 *
 * @param name name of the car
 * @param car loads, wheelbase, tyres
 * @param front front wheel brakes
 * @param rear rear wheel brakes
 * @param pedal the pedal
 * @param apply masters, bar, booster, valve
 * @param frontCircuit lines and fluid to the front
 * @param rearCircuit lines and fluid to the rear
 * @param aims what the builder wants, as numbers
 * @param use where the car is driven
 * @param ruleSets rules chosen by the builder
 * @param checks what was looked at on the car
 * @param parking the parking brake; empty when not given
 * @param heat what heat works on; empty when no schedule is given
 * @param clutch the clutch and its release; empty when not given
 * @param stops how stops are followed over time; empty when not asked for
 * @param shop what is folded and joined; empty when not given
 * @param mount what carries the pedal; empty when not given
 * @param lines where the lines run; empty when not given
 * @param footwell the pedals side by side; empty when not given
 */
public record ResolvedBuild(
        String name,
        ResolvedCar car,
        ResolvedBrake front,
        ResolvedBrake rear,
        ResolvedPedal pedal,
        ResolvedApply apply,
        ResolvedCircuit frontCircuit,
        ResolvedCircuit rearCircuit,
        Aims aims,
        Use use,
        List<RuleSet> ruleSets,
        Checks checks,
        Optional<ResolvedParking> parking,
        Optional<ResolvedHeat> heat,
        Optional<ResolvedClutch> clutch,
        Optional<ResolvedStops> stops,
        Optional<ResolvedShop> shop,
        Optional<ResolvedMount> mount,
        Optional<ResolvedLines> lines,
        Optional<ResolvedFootwell> footwell) {

    /** The same car with another pedal. */
    public ResolvedBuild withPedal(ResolvedPedal other) {
        return new ResolvedBuild(
                name,
                car,
                front,
                rear,
                other,
                apply,
                frontCircuit,
                rearCircuit,
                aims,
                use,
                ruleSets,
                checks,
                parking,
                heat,
                clutch,
                stops,
                shop,
                mount,
                lines,
                footwell);
    }

    /** The same car with another apply system. */
    public ResolvedBuild withApply(ResolvedApply other) {
        return new ResolvedBuild(
                name,
                car,
                front,
                rear,
                pedal,
                other,
                frontCircuit,
                rearCircuit,
                aims,
                use,
                ruleSets,
                checks,
                parking,
                heat,
                clutch,
                stops,
                shop,
                mount,
                lines,
                footwell);
    }
}
