package org.brakewright.analysis.working;

import static org.brakewright.analysis.working.Step.operand;
import static org.brakewright.analysis.working.Step.step;
import static org.brakewright.quantity.Dimension.AREA;
import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TORQUE;
import static org.brakewright.quantity.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.PlateState;
import org.brakewright.analysis.clutch.ReleaseChain;
import org.brakewright.analysis.clutch.ReleaseState;
import org.brakewright.analysis.hydraulics.LineVolume;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedPedal;

/** Opens effort, release, slave stroke and torque of the clutch, each over the plate, new or worn, that is worse. */
final class ClutchWorkings {
    private final ResolvedClutch clutch;
    private final ClutchState state;

    private ClutchWorkings(ResolvedClutch clutch, ClutchState state) {
        this.clutch = clutch;
        this.state = state;
    }

    static void add(ResolvedClutch clutch, ClutchState state, List<Working> workings) {
        ClutchWorkings open = new ClutchWorkings(clutch, state);
        workings.add(new Working("clutch_effort", open.effort(state.heaviest())));
        workings.add(new Working("clutch_release", open.release(state.leastFree())));
        PlateState tightest =
                state.newPlate().extensionLeftM() <= state.wornPlate().extensionLeftM()
                        ? state.newPlate()
                        : state.wornPlate();
        workings.add(new Working("clutch_slave_stroke", open.slave(tightest)));
        workings.add(new Working("clutch_slip", open.torque()));
    }

    private static String name(PlateState plate) {
        return plate.wearM() > 0 ? "worn plate" : "new plate";
    }

    private List<Step> effort(PlateState plate) {
        ReleaseChain chain = ReleaseChain.of(clutch, plate.wearM());
        ReleaseState at = chain.way().stream()
                .max(Comparator.comparingDouble(ReleaseState::effort))
                .orElseThrow();
        Master master = clutch.master();
        ResolvedPedal pedal = clutch.pedal();
        return List.of(
                cover(plate, chain, at),
                pressure(plate, at),
                step(
                        "clutch_pedal",
                        name(plate),
                        at.effort(),
                        FORCE,
                        operand("p", at.pressurePa(), PRESSURE),
                        operand("A_m", master.area(), AREA),
                        operand("F_s", master.springForce() + master.springRate() * at.masterStroke(), FORCE),
                        operand("F_k", master.sealFriction(), FORCE),
                        operand(
                                "R",
                                chain.lever()
                                        .at(pedal.slack() + at.masterStroke())
                                        .ratio(),
                                RATIO),
                        operand("eta", pedal.efficiency(), RATIO),
                        operand("F_p", chain.spring().holdsBack(at.armTravel()), FORCE)));
    }

    private Step cover(PlateState plate, ReleaseChain chain, ReleaseState at) {
        return step(
                "clutch_cover",
                name(plate),
                at.cover().bearingForce(),
                FORCE,
                operand("x", Math.max(0, at.bearingWay() - chain.gap()), LENGTH));
    }

    private Step pressure(PlateState plate, ReleaseState at) {
        ResolvedClutch.Slave slave = clutch.slave();
        return step(
                "clutch_pressure",
                name(plate),
                at.pressurePa(),
                PRESSURE,
                operand("F_b", at.cover().bearingForce(), FORCE),
                operand("i", slave.forkRatio(), RATIO),
                operand("A_s", slave.area(), AREA),
                operand("eta", slave.efficiency(), RATIO));
    }

    private List<Step> release(PlateState plate) {
        ReleaseChain chain = ReleaseChain.of(clutch, plate.wearM());
        ReleaseState end = chain.end();
        List<Step> steps = new ArrayList<>();
        if (clutch.cover().releaseTravel().isEmpty()) {
            steps.add(step(
                    "clutch_needed",
                    name(plate),
                    plate.neededM(),
                    LENGTH,
                    operand("x_l", chain.cover().liftOff(), LENGTH),
                    operand("f", chain.cover().fingerRatio(), RATIO),
                    operand("c", clutch.plate().clearance(), LENGTH)));
        }
        steps.add(stroke(plate, end));
        steps.add(cover(plate, chain, end));
        steps.add(pressure(plate, end));
        steps.add(takenUp(plate, chain.line(), end.pressurePa()));
        steps.add(step(
                "clutch_bearing",
                name(plate),
                plate.bearingTravelM(),
                LENGTH,
                operand("s", end.masterStroke(), LENGTH),
                operand("l", clutch.master().lostStroke(), LENGTH),
                operand("A_m", clutch.master().area(), AREA),
                operand("V", chain.line().total(end.pressurePa()), VOLUME),
                operand("i", clutch.slave().forkRatio(), RATIO),
                operand("A_s", clutch.slave().area(), AREA),
                operand("d", end.cover().bearingForce() * clutch.slave().forkGive(), LENGTH),
                operand("g", chain.gap(), LENGTH)));
        return List.copyOf(steps);
    }

    private Step stroke(PlateState plate, ReleaseState end) {
        ResolvedPedal pedal = clutch.pedal();
        double onArm = end.armTravel() - pedal.freePlay();
        return step(
                "clutch_master_stroke",
                name(plate),
                end.masterStroke(),
                LENGTH,
                operand("S", end.padTravel(), LENGTH),
                operand("y", end.padTravel() - end.armTravel(), LENGTH),
                operand("S_0", pedal.freePlay(), LENGTH),
                operand("R", onArm / (pedal.slack() + end.masterStroke()), RATIO),
                operand("k", pedal.slack(), LENGTH));
    }

    private Step takenUp(PlateState plate, LineVolume line, double pressure) {
        return step(
                "clutch_line",
                name(plate),
                line.total(pressure),
                VOLUME,
                operand("hoses", line.hoses(pressure), VOLUME),
                operand("tubes", line.tubes(pressure), VOLUME),
                operand("liquid", line.liquid(pressure), VOLUME),
                operand("air", line.air(pressure), VOLUME));
    }

    private List<Step> slave(PlateState plate) {
        ReleaseChain chain = ReleaseChain.of(clutch, plate.wearM());
        return List.of(step(
                "clutch_slave_left",
                name(plate),
                plate.extensionLeftM(),
                LENGTH,
                operand("a", chain.ahead(plate.wearM()), LENGTH),
                operand("w", chain.end().bearingWay(), LENGTH)));
    }

    private List<Step> torque() {
        ResolvedClutch.Plate plate = clutch.plate();
        double softer =
                Math.min(state.newPlate().clampForceN(), state.wornPlate().clampForceN());
        double carried = state.torque().uniformWearNM();
        List<Step> steps = new ArrayList<>();
        steps.add(step(
                "clutch_torque",
                "",
                carried,
                TORQUE,
                operand("n", plate.faces(), RATIO),
                operand("mu", plate.friction(), RATIO),
                operand("P", Math.min(softer, clutch.cover().clampLoad().orElse(softer)), FORCE),
                operand("r_o", plate.outerRadius(), LENGTH),
                operand("r_i", plate.innerRadius(), LENGTH)));
        Double engine = state.torque().engineNM();
        Double reserve = state.torque().reserve();
        if (engine != null && reserve != null) {
            steps.add(step(
                    "clutch_reserve",
                    "",
                    reserve,
                    RATIO,
                    operand("T", carried, TORQUE),
                    operand("T_e", engine, TORQUE)));
        }
        return List.copyOf(steps);
    }
}
