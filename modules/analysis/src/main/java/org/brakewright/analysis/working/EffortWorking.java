package org.brakewright.analysis.working;

import static org.brakewright.analysis.working.Step.operand;
import static org.brakewright.analysis.working.Step.step;
import static org.brakewright.quantity.Dimension.ACCELERATION;
import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.AREA;
import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.MASS;
import static org.brakewright.quantity.Dimension.PRESSURE;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.STIFFNESS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.hydraulics.PistonState;
import org.brakewright.analysis.pedal.Mechanisms;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.hydraulics.MeteringValve;
import org.brakewright.kernel.hydraulics.ProportioningValve;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Metering;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMechanism;
import org.brakewright.model.vehicle.AxleEnd;

/** Opens the effort of the hard stop: from the brake force wanted over pedal, bar, masters and valves to both axles. */
final class EffortWorking {
    private final ResolvedBuild build;
    private final OperatingPoint point;
    private final Chain chain;
    private final Pushed pushed;
    private final List<Step> steps = new ArrayList<>();

    private EffortWorking(ResolvedBuild build, OperatingPoint point) {
        this.build = build;
        this.point = point;
        this.chain = Chain.of(build);
        this.pushed = chain.atPedalForce(point.pedalForceN());
    }

    static List<Step> steps(ResolvedBuild build, OperatingPoint point) {
        EffortWorking effort = new EffortWorking(build, point);
        effort.pedal();
        effort.masters();
        effort.valves(AxleEnd.FRONT, effort.pushed.apply().front().pressure());
        effort.valves(AxleEnd.REAR, effort.pushed.apply().rear().pressure());
        effort.residual();
        effort.brakes();
        return List.copyOf(effort.steps);
    }

    private void pedal() {
        double mass = build.car().heaviest().mass();
        double wanted = point.decelerationG() * Gravity.STANDARD;
        steps.add(step(
                "brake_force_wanted",
                "",
                mass * wanted,
                FORCE,
                operand("m", mass, MASS),
                operand("a", wanted, ACCELERATION)));
        build.pedal().mechanism().ifPresent(this::ratio);
        steps.add(step(
                "pedal_lever",
                "",
                pushed.state().thrust(),
                FORCE,
                operand("F", point.pedalForceN(), FORCE),
                operand("R", pushed.lever().ratio(), RATIO),
                operand("eta", build.pedal().efficiency(), RATIO)));
    }

    /** A mechanism's ratio at this place of the stroke. */
    private void ratio(ResolvedMechanism mechanism) {
        double radius = Mechanisms.distance(mechanism.pad());
        double ratio = pushed.lever().ratio();
        steps.add(step(
                "linkage_ratio",
                "",
                ratio,
                RATIO,
                operand("r_p", radius, LENGTH),
                operand("s_p", pushed.lever().padTravel(), LENGTH),
                operand("l", pushed.lever().rodAngle(), ANGLE),
                operand("ds/da", radius / ratio, LENGTH)));
    }

    private void masters() {
        switch (build.apply()) {
            case ResolvedApply.Twin twin -> {
                steps.add(bar(twin.bar()));
                master("front", pushed.apply().front(), twin.front());
                master("rear", pushed.apply().rear(), twin.rear());
            }
            case ResolvedApply.Tandem tandem -> {
                tandem.booster().ifPresent(this::booster);
                master("", pushed.apply().front(), tandem.master());
            }
        }
    }

    private Step bar(Bar bar) {
        double share = pushed.apply().bar().frontShare();
        if (bar.stance().pinSetBack() == 0 && bar.rodLean() == 0) {
            return step(
                    "bar_share",
                    "",
                    share,
                    RATIO,
                    operand("e", bar.offset(), LENGTH),
                    operand("w", bar.clevisSpacing(), LENGTH));
        }
        return step(
                "bar_share_turned",
                "",
                share,
                RATIO,
                operand("a", bar.clevisSpacing() / 2 - bar.offset(), LENGTH),
                operand("b", bar.clevisSpacing() / 2 + bar.offset(), LENGTH),
                operand("d", bar.stance().pinSetBack(), LENGTH),
                operand("t", pushed.apply().bar().tilt(), ANGLE),
                operand("l", bar.rodLean(), ANGLE));
    }

    private void booster(Boost boost) {
        steps.add(step(
                "booster",
                "",
                pushed.apply().front().push(),
                FORCE,
                operand("F_in", pushed.state().thrust(), FORCE),
                operand("F_0", boost.crackInForce(), FORCE),
                operand("G", boost.ratio(), RATIO),
                operand("F_max", boost.vacuum() * boost.diaphragmArea() * boost.efficiency(), FORCE)));
    }

    private void master(String place, PistonState piston, Master master) {
        double spring = master.springForce() + master.sealFriction() + master.springRate() * piston.stroke();
        steps.add(step(
                "spring_force",
                place,
                spring,
                FORCE,
                operand("F_0", master.springForce(), FORCE),
                operand("k", master.springRate(), STIFFNESS),
                operand("s", piston.stroke(), LENGTH),
                operand("F_f", master.sealFriction(), FORCE)));
        steps.add(step(
                "master_pressure",
                place,
                piston.pressure(),
                PRESSURE,
                operand("F", piston.push(), FORCE),
                operand("F_s", spring, FORCE),
                operand("A", master.area(), AREA)));
    }

    /** The valves of a line in the order in which the fluid meets them. */
    private void valves(AxleEnd line, double masterPressure) {
        double pressure = masterPressure;
        if (line == AxleEnd.FRONT && build.apply().valves().metering().isPresent()) {
            pressure = metering(build.apply().valves().metering().get(), pressure);
        }
        for (Optional<Valve> valve : List.of(
                build.apply().valves().proportioning(), build.apply().valves().second())) {
            if (valve.isPresent() && valve.get().line() == line) {
                pressure = proportioning(valve.get(), pressure);
            }
        }
    }

    private double metering(Metering valve, double inlet) {
        double outlet = new MeteringValve(valve.opening(), valve.blend()).outlet(inlet);
        steps.add(step(
                "metering_valve",
                "front",
                outlet,
                PRESSURE,
                operand("p", inlet, PRESSURE),
                operand("p_o", valve.opening(), PRESSURE),
                operand("p_b", valve.blend(), PRESSURE)));
        return outlet;
    }

    private double proportioning(Valve valve, double inlet) {
        double outlet = new ProportioningValve(valve.knee(), valve.slope()).outlet(inlet);
        steps.add(step(
                "proportioning_valve",
                valve.line().name().toLowerCase(Locale.ROOT),
                outlet,
                PRESSURE,
                operand("p", inlet, PRESSURE),
                operand("p_k", valve.knee(), PRESSURE),
                operand("s", valve.slope(), RATIO)));
        return outlet;
    }

    private void brakes() {
        steps.add(brake(
                "front", build.front(), point.frontPressurePa(), build.car().frontTyreRadius(), point.frontForceN()));
        steps.add(
                brake("rear", build.rear(), point.rearPressurePa(), build.car().rearTyreRadius(), point.rearForceN()));
        steps.add(step(
                "brake_force_sum",
                "",
                point.frontForceN() + point.rearForceN(),
                FORCE,
                operand("F_f", point.frontForceN(), FORCE),
                operand("F_r", point.rearForceN(), FORCE)));
    }

    private void residual() {
        steps.add(step(
                "solution_residual",
                "",
                chain.apply().imbalance(pushed.apply()) * pushed.state().thrust(),
                FORCE,
                operand("F_rod", pushed.state().thrust(), FORCE)));
    }

    private static Step brake(String place, ResolvedBrake brake, double pressure, double tyre, double force) {
        return switch (brake) {
            case ResolvedBrake.Disc disc ->
                step(
                        "disc_force",
                        place,
                        force,
                        FORCE,
                        operand("mu", disc.friction(), RATIO),
                        operand("p", pressure, PRESSURE),
                        operand("p_0", disc.thresholdPressure(), PRESSURE),
                        operand("A", disc.pistonArea(), AREA),
                        operand("r_e", disc.effectiveRadius(), LENGTH),
                        operand("r", tyre, LENGTH));
            case ResolvedBrake.Drum drum ->
                step(
                        "drum_force",
                        place,
                        force,
                        FORCE,
                        operand("C*", drum.brakeFactor(), RATIO),
                        operand("p", pressure, PRESSURE),
                        operand("p_0", drum.thresholdPressure(), PRESSURE),
                        operand("A", drum.wheelCylinderArea(), AREA),
                        operand("r_d", drum.drumRadius(), LENGTH),
                        operand("r", tyre, LENGTH));
        };
    }
}
