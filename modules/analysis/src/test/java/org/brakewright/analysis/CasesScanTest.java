package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.balance.BalanceCase;
import org.brakewright.analysis.balance.BalanceCases;
import org.brakewright.analysis.balance.CaseName;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.PadState;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedBrake.FrictionStates;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.vehicle.AxleEnd;
import org.junit.jupiter.api.Test;

/**
 * Every case by pressing harder and harder in small steps, with statics written out here, against the closed forms: air,
 * engine, state of the pads and load-sensitive tyres together.
 */
class CasesScanTest {
    private static final int BUILDS = 60;

    /** N. */
    private static final double STEP = 2;

    /** N. */
    private static final double MOST = 6000;

    /** What one push does in one case, by moments about the wheels' contacts. */
    private static final class Pushed {
        final double decelerationG;
        final double frontUsed;
        final double rearUsed;

        Pushed(ResolvedBuild build, CaseName name, ChainState state) {
            ResolvedCar car = build.car();
            ResolvedLoadCase load = car.loadCases().stream()
                    .filter(each -> each.name().equals(name.loadCase()))
                    .findFirst()
                    .orElseThrow();
            double front =
                    state.frontForce() * factor(name.pads(), true, build.front().frictionStates());
            double rear =
                    state.rearForce() * factor(name.pads(), false, build.rear().frictionStates());
            if (name.engineBraking()) {
                ResolvedCar.EngineBraking engine = car.engineBraking().orElseThrow();
                front += engine.drivenAxle() == AxleEnd.FRONT ? engine.force() : 0;
                rear += engine.drivenAxle() == AxleEnd.REAR ? engine.force() : 0;
            }
            double[] air = {0, 0, 0};
            if (name.speedMS() > 0) {
                ResolvedCar.Aero aero = car.aero().orElseThrow();
                air = new double[] {aero.frontDownforce(), aero.rearDownforce(), aero.drag()};
            }
            double frontRest = load.frontMass() * Gravity.STANDARD;
            double rearRest = load.rearMass() * Gravity.STANDARD;
            decelerationG = (front + rear + air[2]) / (frontRest + rearRest);
            double moved = decelerationG * (frontRest + rearRest) * load.cgHeight() / car.wheelbase();
            double s = car.loadSensitivity().orElse(0);
            frontUsed = used(front, frontRest + air[0] + moved, frontRest, s);
            rearUsed = used(rear, rearRest + air[1] - moved, rearRest, s);
        }

        private static double used(double force, double load, double atRest, double sensitivity) {
            return load <= 0 ? Double.POSITIVE_INFINITY : force / load * Math.pow(load / atRest, sensitivity);
        }

        private static double factor(PadState pads, boolean front, FrictionStates states) {
            return switch (pads) {
                case COLD -> states.cold();
                case WORKING -> 1;
                case HOT -> states.hot();
                case WET -> states.wet();
                case FRONT_FADED -> front ? states.hot() : 1;
            };
        }
    }

    /** How close the least lead of a curved chain is drawn: three forces, each within a thousandth and a newton. */
    private static final double DRAWN = 4e-3;

    /** Below so many pushes the scan resolves nothing. */
    private static final int ENOUGH = 20;

    @Test
    void lockOrderAndInversionsAreThoseOfAScanOverThePush() {
        RandomCars.each(BUILDS, rig -> {
            List<ChainState> states = DoubleStream.iterate(0, force -> force <= MOST, force -> force + STEP)
                    .mapToObj(rig::at)
                    .toList();
            for (BalanceCase each : BalanceCases.of(rig.build(), rig.curve())) {
                List<Pushed> pushes = states.stream()
                        .map(state -> new Pushed(rig.build(), each.name(), state))
                        .toList();
                firstLock(pushes, each, rig.build().car().grip());
                frontFirst(pushes, each);
                leastLead(pushes, each);
            }
        });
    }

    private static void firstLock(List<Pushed> pushes, BalanceCase each, double grip) {
        Pushed before = pushes.getFirst();
        for (Pushed now : pushes) {
            if (Math.max(now.frontUsed, now.rearUsed) >= grip) {
                Lock told = Objects.requireNonNull(each.gripLock());
                assertThat(told.decelerationG()).isBetween(before.decelerationG - 1e-9, now.decelerationG + 1e-9);
                assertThat(told.efficiency()).isBetween(0.0, 1 + 1e-6);
                return;
            }
            before = now;
        }
    }

    /** Pushes over the decelerations that are judged. */
    private static List<Pushed> judged(List<Pushed> pushes, BalanceCase each) {
        double from = each.name().judgedFromG(each.greatestDecelerationG()) + 1e-4;
        return pushes.stream()
                .filter(push -> push.decelerationG > from && push.decelerationG < each.greatestDecelerationG())
                .toList();
    }

    /** Up to the critical deceleration the front is ahead everywhere. */
    private static void frontFirst(List<Pushed> pushes, BalanceCase each) {
        RearFirst stretch = each.rearFirst();
        Double critical = stretch == null ? null : stretch.fromG();
        for (Pushed push : judged(pushes, each)) {
            if (critical == null || push.decelerationG < critical - 1e-6) {
                assertThat(push.rearUsed)
                        .as("at %s g", push.decelerationG)
                        .isLessThanOrEqualTo(push.frontUsed * (1 + 1e-6));
            }
        }
    }

    /** The least lead is that of the scan, as far as the steps of the scan show it. */
    private static void leastLead(List<Pushed> pushes, BalanceCase each) {
        double least = Double.POSITIVE_INFINITY;
        double before = Double.POSITIVE_INFINITY;
        double step = 1e-3;
        for (Pushed push : judged(pushes, each)) {
            double lead = push.rearUsed > 0 ? push.frontUsed / push.rearUsed : Double.POSITIVE_INFINITY;
            step = Math.max(step, before < 20 ? Math.abs(lead - before) : 0);
            before = lead;
            least = Math.min(least, lead);
        }
        Double spare = each.rearToSpare();
        if (spare == null || !Double.isFinite(least)) {
            return;
        }
        assertThat(spare).isLessThanOrEqualTo(least - 1 + DRAWN * (1 + least));
        boolean whole = pushes.getLast().decelerationG > each.greatestDecelerationG();
        if (whole && least < 5 && judged(pushes, each).size() > ENOUGH) {
            assertThat(spare).as("least lead").isCloseTo(least - 1, within(2 * step + DRAWN * (1 + least)));
        }
    }

    /** With every wheel at its grip: forces by load and grip alone, drag beside them (closed form for steady grip). */
    @Test
    void theGreatestDecelerationIsGripTimesLoadAndDrag() {
        RandomCars.each(200, rig -> {
            ResolvedCar car = rig.build().car();
            if (car.loadSensitivity().isEmpty() && car.aero().isPresent()) {
                ResolvedCar.Aero aero = car.aero().get();
                for (BalanceCase each : BalanceCases.of(rig.build(), rig.curve())) {
                    double weight = weight(car, each.name().loadCase());
                    double air = each.name().speedMS() > 0 ? aero.frontDownforce() + aero.rearDownforce() : 0;
                    double drag = each.name().speedMS() > 0 ? aero.drag() : 0;
                    assertThat(each.greatestDecelerationG())
                            .isCloseTo((car.grip() * (weight + air) + drag) / weight, withinPercentage(1e-9));
                }
            }
        });
    }

    private static double weight(ResolvedCar car, String loadCase) {
        return car.loadCases().stream()
                        .filter(each -> each.name().equals(loadCase))
                        .findFirst()
                        .orElseThrow()
                        .mass()
                * Gravity.STANDARD;
    }

    /** The plain case is the load case's own result, and pads in the same state leave the balance of two discs alone. */
    @Test
    void thePlainCaseIsTheLoadCase() {
        RandomCars.each(200, rig -> {
            Analysis analysis = Analyse.analyse(rig.build());
            for (BalanceCase each : analysis.balanceCases()) {
                if (each.name().plain() && rig.build().car().loadSensitivity().isEmpty()) {
                    LoadCaseResult result = analysis.loadCases().stream()
                            .filter(other -> other.name().equals(each.name().loadCase()))
                            .findFirst()
                            .orElseThrow();
                    assertThat(each.rearFirst())
                            .isEqualTo(result.rearFirst().stream()
                                    .filter(RearFirst::matters)
                                    .findFirst()
                                    .orElse(null));
                    assertThat(each.gripLock()).isEqualTo(result.gripLock());
                }
            }
        });
    }
}
