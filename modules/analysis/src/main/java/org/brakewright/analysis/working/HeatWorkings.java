package org.brakewright.analysis.working;

import static org.brakewright.analysis.working.Step.operand;
import static org.brakewright.analysis.working.Step.step;
import static org.brakewright.quantity.Dimension.AREA;
import static org.brakewright.quantity.Dimension.ENERGY;
import static org.brakewright.quantity.Dimension.HEAT_TRANSFER;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;
import static org.brakewright.quantity.Dimension.POWER;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.SPECIFIC_HEAT;
import static org.brakewright.quantity.Dimension.SPEED;
import static org.brakewright.quantity.Dimension.TEMPERATURE;
import static org.brakewright.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static org.brakewright.quantity.Dimension.TIME;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.analysis.heat.HeatSample;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.ScheduleHeat;
import org.brakewright.analysis.heat.WheelHeats;
import org.brakewright.kernel.thermal.GreyIron;
import org.brakewright.kernel.thermal.Surroundings;
import org.brakewright.kernel.thermal.WheelHeat;
import org.brakewright.model.resolved.ResolvedBrakeHeat;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedHeat;

/**
 * Opens the hottest face, the hottest fluid and the longest cooling. What was followed over time ends at its result, with what it was
 * followed from; the rest follows from the numbers shown.
 */
final class HeatWorkings {
    private final ResolvedBuild build;
    private final ResolvedHeat heat;
    private final HeatState state;

    /** One axle through one schedule. */
    private record Way(String axle, ScheduleHeat schedule, AxleHeat peaks, ResolvedBrakeHeat brake) {}

    private HeatWorkings(ResolvedBuild build, ResolvedHeat heat, HeatState state) {
        this.build = build;
        this.heat = heat;
        this.state = state;
    }

    static void add(ResolvedBuild build, ResolvedHeat heat, HeatState state, List<Working> workings) {
        if (state.schedules().isEmpty()) {
            return;
        }
        HeatWorkings open = new HeatWorkings(build, heat, state);
        workings.add(new Working("rotor_temperature", open.rotor(open.worst(AxleHeat::facePeakK))));
        workings.add(new Working("fluid_boiling", open.fluid(open.worst(AxleHeat::fluidPeakK))));
        ScheduleHeat longest = state.schedules().stream()
                .max(Comparator.comparingDouble(HeatWorkings::cooling))
                .orElseThrow();
        Double time = longest.coolingTimeS();
        if (time != null && time > 0) {
            workings.add(new Working("cooling_time", open.cooling(longest, time)));
        }
    }

    private static double cooling(ScheduleHeat schedule) {
        Double time = schedule.coolingTimeS();
        return time == null ? Double.POSITIVE_INFINITY : time;
    }

    private Way worst(ToDoubleFunction<AxleHeat> measure) {
        return state.schedules().stream()
                .flatMap(schedule -> Stream.of(front(schedule), rear(schedule)))
                .max(Comparator.comparingDouble(way -> measure.applyAsDouble(way.peaks())))
                .orElseThrow();
    }

    private Way front(ScheduleHeat schedule) {
        return new Way("front", schedule, schedule.front(), heat.front());
    }

    private Way rear(ScheduleHeat schedule) {
        return new Way("rear", schedule, schedule.rear(), heat.rear());
    }

    private List<Step> rotor(Way way) {
        AxleHeat peaks = way.peaks();
        WheelHeat wheel = WheelHeats.of(way.brake());
        double mean = peaks.rotorPeakK();
        double share = wheel.rotorShare(mean);
        double kept = wheel.rotor().stored(mean) - wheel.rotor().stored(heat.ambient());
        return List.of(
                brought(way.schedule()),
                step(
                        "rotor_share",
                        way.axle(),
                        share,
                        RATIO,
                        operand("A_r", wheel.rotor().sweptArea(), AREA),
                        operand("A_l", wheel.linings().area(), AREA),
                        operand("k", GreyIron.effusivity(mean) / wheel.linings().effusivity(), RATIO)),
                step("rotor_kept", way.axle(), kept, ENERGY, operand("s", share, RATIO)),
                step(
                        "rotor_mean",
                        way.axle(),
                        mean,
                        TEMPERATURE,
                        operand("Q", kept, ENERGY),
                        operand("m", wheel.rotor().mass(), MASS),
                        operand("T_a", heat.ambient(), TEMPERATURE)),
                step(
                        "rotor_face",
                        way.axle(),
                        peaks.facePeakK(),
                        TEMPERATURE,
                        operand("T", peaks.faceMeanK(), TEMPERATURE),
                        operand("dT", peaks.facePeakK() - peaks.faceMeanK(), TEMPERATURE_DIFFERENCE)));
    }

    private Step brought(ScheduleHeat schedule) {
        return step(
                "heat_brought",
                schedule.name(),
                schedule.energyJ(),
                ENERGY,
                operand("m", build.car().heaviest().mass(), MASS),
                operand("i", heat.rotatingShare(), RATIO),
                operand("t", schedule.durationS(), TIME));
    }

    private List<Step> fluid(Way way) {
        AxleHeat peaks = way.peaks();
        return List.of(
                brought(way.schedule()),
                step(
                        "lining_peak",
                        way.axle(),
                        peaks.liningPeakK(),
                        TEMPERATURE,
                        operand("T_r", peaks.rotorPeakK(), TEMPERATURE),
                        operand("b", way.brake().lining().thickness(), LENGTH),
                        operand("A_l", WheelHeats.of(way.brake()).linings().area(), AREA)),
                step(
                        "fluid_peak",
                        way.axle(),
                        peaks.fluidPeakK(),
                        TEMPERATURE,
                        operand("T_l", peaks.liningPeakK(), TEMPERATURE),
                        operand("h", way.brake().pistonTransfer(), HEAT_TRANSFER),
                        operand("A", way.brake().pistonArea(), AREA),
                        operand("t", peaks.fluidPeakS(), TIME)));
    }

    private List<Step> cooling(ScheduleHeat schedule, double time) {
        HeatSample end = schedule.samples().stream()
                .filter(sample -> sample.timeS() >= schedule.durationS())
                .findFirst()
                .orElseThrow();
        boolean front = end.frontRotorK() >= end.rearRotorK();
        Way way = front ? front(schedule) : rear(schedule);
        double temperature = front ? end.frontRotorK() : end.rearRotorK();
        double tyre = front ? build.car().frontTyreRadius() : build.car().rearTyreRadius();
        double speed = heat.onwardSpeed();
        WheelHeat wheel = WheelHeats.of(way.brake());
        double loss = wheel.rotor().loss(temperature, new Surroundings(speed, speed / tyre, heat.ambient()));
        return List.of(
                step(
                        "rotor_loss",
                        way.axle(),
                        loss,
                        POWER,
                        operand("T", temperature, TEMPERATURE),
                        operand("T_a", heat.ambient(), TEMPERATURE),
                        operand("v", speed, SPEED)),
                step(
                        "time_constant",
                        way.axle(),
                        way.peaks().timeConstantS(),
                        TIME,
                        operand("m", wheel.rotor().mass(), MASS),
                        operand("c", GreyIron.specificHeat(temperature), SPECIFIC_HEAT),
                        operand("T - T_a", temperature - heat.ambient(), TEMPERATURE_DIFFERENCE),
                        operand("P", loss, POWER)),
                step(
                        "cooled",
                        schedule.name(),
                        time,
                        TIME,
                        operand("tau", way.peaks().timeConstantS(), TIME),
                        operand("T", temperature, TEMPERATURE),
                        operand("T_a", heat.ambient(), TEMPERATURE)));
    }
}
