package org.brakewright.analysis;

import java.util.Optional;
import java.util.function.DoublePredicate;
import org.brakewright.model.hydraulics.CircuitSplit;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * One push, solved by halving alone and with no law of the kernel: strokes against volumes, the bar's tilt against its own
 * moments, the thrust against the force at the pad. Slow, and written from the equations a second time.
 *
 * @param build any car
 */
record BruteForce(ResolvedBuild build) {
    private static final double PSI = 6894.757293168;
    private static final double ATMOSPHERE = 101325;
    private static final double POISSON = 0.29;
    private static final double SETTLING = 0.5e6;

    /** 49 CFR 571.106, Table I, 1/8 in: cc per foot at 1000, 1500 and 2900 psi, from memory. */
    private static final double[][] HOSE = {{0, 0}, {1000, 0.66}, {1500, 0.79}, {2900, 1.21}};

    /** What a push gives; forces in N, pressures at the wheels in Pa, lengths in m, tilt in rad. */
    record Found(
            double thrust,
            double frontPressure,
            double rearPressure,
            double frontStroke,
            double rearStroke,
            double tilt,
            double padTravel) {}

    private record Filled(double pressure, double stroke) {}

    private record Masters(Filled front, Filled rear, double rodTravel, double tilt) {}

    /** How much of each axle a piston fills. */
    private record Share(double front, double rear) {}

    /** Halves an interval until nothing lies between its ends. */
    static double halve(double low, double high, DoublePredicate tooMuch) {
        double from = low;
        double to = high;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (from + to);
            if (middle <= from || middle >= to) {
                break;
            }
            if (tooMuch.test(middle)) {
                to = middle;
            } else {
                from = middle;
            }
        }
        return 0.5 * (from + to);
    }

    Found push(double pedalForce) {
        ResolvedPedal pedal = build.pedal();
        double most = 3.1 * pedalForce * pedal.efficiency() * lever(0)[1];
        double thrust = pedal.mechanism().isEmpty()
                ? pedalForce * pedal.efficiency() * pedal.ratio()
                : halve(0, most, tried -> {
                    double ratio = lever(masters(tried).rodTravel() + pedal.slack())[1];
                    return tried > pedalForce * ratio * pedal.efficiency();
                });
        Masters masters = masters(thrust);
        double arc = lever(masters.rodTravel() + pedal.slack())[0];
        double given = pedalForce * (1 / pedal.mountStiffness() + 1 / pedal.armStiffness());
        boolean diagonal =
                build.apply() instanceof ResolvedApply.Tandem tandem && tandem.split() == CircuitSplit.DIAGONAL;
        double inFront = masters.front().pressure();
        double behind = masters.rear().pressure();
        return new Found(
                thrust,
                diagonal
                        ? 0.5 * (wheels(AxleEnd.FRONT, inFront) + wheels(AxleEnd.FRONT, behind))
                        : wheels(AxleEnd.FRONT, inFront),
                diagonal
                        ? 0.5 * (wheels(AxleEnd.REAR, inFront) + wheels(AxleEnd.REAR, behind))
                        : wheels(AxleEnd.REAR, behind),
                masters.front().stroke(),
                masters.rear().stroke(),
                masters.tilt(),
                pedal.freePlay() + arc + given);
    }

    /** Pad's arc and ratio at an advance of the rod; a mechanism by halving its angle, its ratio as a difference. */
    private double[] lever(double rodTravel) {
        if (build.pedal().mechanism().isEmpty()) {
            return new double[] {
                build.pedal().ratio() * rodTravel, build.pedal().ratio()
            };
        }
        LinkageByHand linkage = new LinkageByHand(build.pedal().mechanism().get());
        double angle = halve(0, 0.9, tried -> linkage.advance(tried) > rodTravel);
        double step = 1e-5;
        double rate = (linkage.advance(angle + step) - linkage.advance(angle - step)) / (2 * step);
        return new double[] {linkage.padArm() * angle, linkage.padArm() / rate};
    }

    private Masters masters(double thrust) {
        return switch (build.apply()) {
            case ResolvedApply.Twin twin -> twin(twin, thrust);
            case ResolvedApply.Tandem tandem -> tandem(tandem, thrust);
        };
    }

    private Masters tandem(ResolvedApply.Tandem tandem, double thrust) {
        double push = thrust;
        if (tandem.booster().isPresent()) {
            Boost boost = tandem.booster().get();
            double help = (boost.ratio() - 1) * (thrust - boost.crackInForce());
            double all = boost.vacuum() * boost.diaphragmArea() * boost.efficiency();
            push += thrust < boost.crackInForce() ? 0 : help > all ? all : help;
        }
        boolean diagonal = tandem.split() == CircuitSplit.DIAGONAL;
        double lost = tandem.master().lostStroke() / 2;
        Filled front = filled(tandem.master(), lost, push, diagonal ? new Share(0.5, 0.5) : new Share(1, 0));
        Filled rear = filled(tandem.master(), lost, push, diagonal ? new Share(0.5, 0.5) : new Share(0, 1));
        return new Masters(front, rear, front.stroke() + rear.stroke(), 0);
    }

    private Masters twin(ResolvedApply.Twin twin, double thrust) {
        BarByHand bar = new BarByHand(twin.bar());
        double tilt = halve(-1.5, 1.5, tried -> {
            double share = bar.frontShare(tried);
            double front = front(twin, thrust * share).stroke();
            double rear = rear(twin, thrust * (1 - share)).stroke();
            return Math.tan(tried) * twin.bar().clevisSpacing() > bar.lead(front, rear, tried);
        });
        double share = bar.frontShare(tilt);
        Filled front = front(twin, thrust * share);
        Filled rear = rear(twin, thrust * (1 - share));
        return new Masters(front, rear, bar.bearing(front.stroke(), rear.stroke(), tilt), tilt);
    }

    private Filled front(ResolvedApply.Twin twin, double push) {
        return filled(twin.front(), twin.front().lostStroke(), push, new Share(1, 0));
    }

    private Filled rear(ResolvedApply.Twin twin, double push) {
        return filled(twin.rear(), twin.rear().lostStroke(), push, new Share(0, 1));
    }

    /** The stroke at which what the piston has displaced is what the brakes behind it take. */
    private Filled filled(Master master, double lost, double push, Share share) {
        double over = push - master.springForce() - master.sealFriction();
        if (over <= 0) {
            return new Filled(0, 0);
        }
        if (over <= master.springRate() * lost) {
            return new Filled(0, over / master.springRate());
        }
        double most = lost + taken(share, over / master.area()) / master.area();
        double stroke = halve(lost, most, tried -> {
            double pressure = Math.max(0, (over - master.springRate() * tried) / master.area());
            return master.area() * (tried - lost) > taken(share, pressure);
        });
        return new Filled(Math.max(0, (over - master.springRate() * stroke) / master.area()), stroke);
    }

    private double taken(Share share, double pressure) {
        return share.front() * taken(AxleEnd.FRONT, pressure) + share.rear() * taken(AxleEnd.REAR, pressure);
    }

    private double taken(AxleEnd axle, double masterPressure) {
        double kept = circuit(axle).residualPressure().orElse(0);
        double atRest = kept > 0 ? demand(axle, kept) : 0;
        return demand(axle, wheels(axle, masterPressure)) - atRest;
    }

    /** Pressure at the wheels: held off, reduced, reduced again, never below what a residual valve keeps. */
    private double wheels(AxleEnd axle, double masterPressure) {
        ResolvedApply.Valves valves = build.apply().valves();
        double pressure = masterPressure;
        if (axle == AxleEnd.FRONT && valves.metering().isPresent()) {
            double opening = valves.metering().get().opening();
            double blend = valves.metering().get().blend();
            pressure = pressure <= opening
                    ? 0
                    : pressure >= blend ? pressure : blend * (pressure - opening) / (blend - opening);
        }
        pressure = reduced(valves.proportioning(), axle, pressure);
        pressure = reduced(valves.second(), axle, pressure);
        return Math.max(pressure, circuit(axle).residualPressure().orElse(0));
    }

    private static double reduced(Optional<Valve> valve, AxleEnd axle, double pressure) {
        return valve.isEmpty()
                        || valve.get().line() != axle
                        || pressure <= valve.get().knee()
                ? pressure
                : valve.get().knee()
                        + valve.get().slope() * (pressure - valve.get().knee());
    }

    private ResolvedCircuit circuit(AxleEnd axle) {
        return axle == AxleEnd.FRONT ? build.frontCircuit() : build.rearCircuit();
    }

    private double demand(AxleEnd axle, double pressure) {
        ResolvedCircuit circuit = circuit(axle);
        ResolvedBrake brake = axle == AxleEnd.FRONT ? build.front() : build.rear();
        return brake(brake, pressure) + tubeAndFluid(circuit, pressure) + hose(circuit, pressure);
    }

    private static double brake(ResolvedBrake brake, double pressure) {
        double out = pressure >= brake.thresholdPressure() ? 1 : pressure / brake.thresholdPressure();
        return switch (brake) {
            case ResolvedBrake.Disc disc -> {
                double eachPad = out * (disc.runningClearance() + disc.knockBack())
                        + disc.padCompression() * pressure
                        + disc.padSettling() * pressure / (pressure + SETTLING);
                yield 2 * disc.pistonArea() * (2 * eachPad + disc.caliperSpread() * pressure);
            }
            case ResolvedBrake.Drum drum ->
                4 * drum.wheelCylinderArea() * (out * drum.shoeMovement() + drum.shoeCompression() * pressure);
        };
    }

    /** A thick closed tube in one formula (Timoshenko, Strength of Materials), its fluid, and the air in it at one temperature. */
    private static double tubeAndFluid(ResolvedCircuit circuit, double pressure) {
        double outer = circuit.tubeOutsideDiameter() / 2;
        double inner = outer - circuit.tubeWall();
        double held = Math.PI * inner * inner * circuit.tubeLength();
        double widened = (3 * (1 - 2 * POISSON) * inner * inner + 2 * (1 + POISSON) * outer * outer)
                / (outer * outer - inner * inner);
        double fluid = held + circuit.trappedVolume();
        double air = fluid * circuit.freeAir();
        return held * widened * pressure / circuit.tubeModulus()
                + fluid * pressure / circuit.bulkModulus()
                + air * pressure / (ATMOSPHERE + pressure);
    }

    private static double hose(ResolvedCircuit circuit, double pressure) {
        int row = 1;
        while (row < HOSE.length - 1 && pressure > HOSE[row][0] * PSI) {
            row++;
        }
        double along = (pressure / PSI - HOSE[row - 1][0]) / (HOSE[row][0] - HOSE[row - 1][0]);
        double perFoot = HOSE[row - 1][1] + along * (HOSE[row][1] - HOSE[row - 1][1]);
        return circuit.hoseLength() * circuit.hoseExpansion() * perFoot / HOSE[2][1];
    }
}
