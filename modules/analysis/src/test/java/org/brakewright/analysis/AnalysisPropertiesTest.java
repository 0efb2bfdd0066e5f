package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Objects;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedPedal;
import org.junit.jupiter.api.Test;

/** What must hold for every car whatever its numbers (identities and conservation, closed form). */
class AnalysisPropertiesTest {
    private static final int BUILDS = 2000;

    @Test
    void noNumberIsEverNotANumber() {
        RandomCars.each(BUILDS, rig -> {
            Analysis analysis = Analyse.analyse(rig.build());
            assertThat(Leaves.of(analysis)).hasSizeGreaterThan(50).allSatisfy((path, value) -> {
                if (value instanceof Double number) {
                    assertThat(number).as(path).isFinite();
                }
            });
        });
    }

    @Test
    void axleForcesSumToTheDecelerationAndNoEfficiencyExceedsOne() {
        RandomCars.each(BUILDS, rig -> {
            for (LoadCaseResult result : Analyse.analyse(rig.build()).loadCases()) {
                for (OperatingPoint point : result.atDeceleration()) {
                    double sum = point.frontForceN() + point.rearForceN();
                    assertThat(sum)
                            .isCloseTo(
                                    point.decelerationG() * result.massKg() * Gravity.STANDARD, withinPercentage(1e-9));
                    assertThat(point.decelerationG() * 10)
                            .isCloseTo(Math.rint(point.decelerationG() * 10), within(1e-9));
                    assertThat(point.efficiency()).isLessThanOrEqualTo(1 + 1e-9);
                }
            }
        });
    }

    @Test
    void moreFootNeverGivesLess() {
        RandomCars.each(BUILDS, rig -> {
            Chain chain = rig.chain();
            Pushed before = chain.atPedalForce(0);
            for (int force = 25; force <= 2000; force += 25) {
                Pushed now = chain.atPedalForce(force);
                assertThat(now.state().frontPressure())
                        .isGreaterThanOrEqualTo(before.state().frontPressure());
                assertThat(now.state().rearPressure())
                        .isGreaterThanOrEqualTo(before.state().rearPressure());
                assertThat(now.state().totalForce())
                        .isGreaterThanOrEqualTo(before.state().totalForce());
                assertThat(now.padTravel()).isGreaterThan(before.padTravel());
                before = now;
            }
        });
    }

    /** The broken line is the chain itself: between two bends nothing else happens. */
    @Test
    void theBrokenLineIsTheChain() {
        RandomCars.each(BUILDS, rig -> {
            for (double force = 3; force < 3000; force *= 1.7) {
                ChainState direct = rig.at(force);
                ChainState line = rig.curve().at(force);
                assertThat(line.frontForce()).isCloseTo(direct.frontForce(), within(1e-6));
                assertThat(line.rearForce()).isCloseTo(direct.rearForce(), within(1e-6));
                assertThat(line.rearPressure()).isCloseTo(direct.rearPressure(), within(1e-3));
            }
        });
    }

    /** Where a push more gives no force more, as behind a closed valve, the way back is to the least such push. */
    @Test
    void theWayBackFromABrakeForceIsTheLeastPushThatGivesIt() {
        RandomCars.each(BUILDS, rig -> {
            for (double force = 60; force < 2000; force *= 2) {
                double total = rig.at(force).totalForce();
                double back = rig.curve().pedalForce(total).orElseThrow();
                assertThat(rig.at(back).totalForce()).isCloseTo(total, within(1e-6));
                if (rig.at(0.999 * force).totalForce() < total - 1e-3) {
                    assertThat(back).isCloseTo(force, withinPercentage(1e-6));
                } else {
                    assertThat(back).isLessThanOrEqualTo(force);
                }
            }
        });
    }

    @Test
    void theSharesOfTheTravelAddUpToIt() {
        RandomCars.each(BUILDS, rig -> {
            HardStop stop = Analyse.analyse(rig.build()).hardStop();
            if (stop != null) {
                double sum = stop.travelBudget().stream()
                        .mapToDouble(TravelShare::padTravelM)
                        .sum();
                assertThat(sum).isCloseTo(stop.point().pedalTravelM(), within(1e-12));
            }
        });
    }

    /**
     * What the foot puts in over a step, less friction, mount and arm, is what springs and fluid take: taken at one state of
     * the step, virtual work of bar, masters and fluid balances whatever the shape of the volumes. A bar that turns about
     * set-back pins keeps its clevises' spacing instead of its length: within a fifth of a radian that costs about a part in 100.
     */
    @Test
    void energyIsNeverMade() {
        RandomCars.each(BUILDS, rig -> {
            Chain chain = rig.chain().unassisted();
            for (double force = 20; force < 1500; force *= 1.5) {
                if (Math.abs(chain.atPedalForce(force).apply().bar().tilt()) > 0.2) {
                    break;
                }
                Work work = Work.between(rig, chain, force, force + 10);
                double percent = turns(rig) ? 1.1 : 1e-6;
                assertThat(work.in()).isGreaterThanOrEqualTo(work.fluid() * (1 - percent / 100) - 1e-12);
                if (work.pressed()) {
                    double taken = work.fluid() + work.springs();
                    assertThat(work.in()).isCloseTo(taken, within(percent / 100 * taken + 1e-9));
                }
            }
        });
    }

    private static boolean turns(Rig rig) {
        return rig.build().apply() instanceof ResolvedApply.Twin twin
                && !twin.bar()
                        .stance()
                        .equals(ResolvedApply.Stance.square(twin.bar().clevisSpacing()));
    }

    /**
     * Work over a small step at the pressures of its middle, J.
     *
     * @param in at the pad less chain losses
     * @param fluid taken by the wheel brakes' circuits
     * @param springs taken by the masters' return springs
     * @param pressed whether both masters press
     */
    private record Work(double in, double fluid, double springs, boolean pressed) {
        static Work between(Rig rig, Chain chain, double low, double high) {
            Pushed middle = chain.atPedalForce((low + high) / 2);
            Pushed from = chain.atPedalForce(low);
            Pushed to = chain.atPedalForce(high);
            ResolvedPedal pedal = rig.build().pedal();
            double give = (high - low) * (1 / pedal.mountStiffness() + 1 / pedal.armStiffness());
            double in = middle.state().pedalForce() * pedal.efficiency() * (to.padTravel() - from.padTravel() - give);
            double front = to.frontStroke() - from.frontStroke();
            double rear = to.rearStroke() - from.rearStroke();
            ResolvedApply.Master first = master(rig, true);
            ResolvedApply.Master second = master(rig, false);
            double inFront = middle.apply().front().pressure();
            double behind = middle.apply().rear().pressure();
            double fluid = inFront * first.area() * front + behind * second.area() * rear;
            double springs = spring(first, middle.frontStroke()) * front + spring(second, middle.rearStroke()) * rear;
            return new Work(in, fluid, springs, inFront > 0 && behind > 0);
        }

        private static double spring(ResolvedApply.Master master, double stroke) {
            return master.springForce() + master.sealFriction() + master.springRate() * stroke;
        }

        private static ResolvedApply.Master master(Rig rig, boolean front) {
            return switch (rig.build().apply()) {
                case ResolvedApply.Twin twin -> front ? twin.front() : twin.rear();
                case ResolvedApply.Tandem tandem -> tandem.master();
            };
        }
    }

    /** An axle that locks uses the grip and the other one no more. */
    @Test
    void atTheLockTheLockedAxleUsesTheGripAndTheOtherNoMore() {
        RandomCars.each(BUILDS, rig -> {
            Analysis analysis = Analyse.analyse(rig.build());
            for (int i = 0; i < 2; i++) {
                for (Lock lock : analysis.loadCases().get(i).lock()) {
                    OperatingPoint point = rig.braked(lock.decelerationG(), i);
                    double front = point.frontAdhesion();
                    double rear = Objects.requireNonNull(point.rearAdhesion());
                    assertThat(lock.efficiency()).isLessThanOrEqualTo(1 + 1e-9);
                    assertThat(lock.efficiency()).isCloseTo(lock.decelerationG() / lock.grip(), within(1e-12));
                    assertThat(Math.max(front, rear)).isCloseTo(lock.grip(), within(1e-9));
                    if (lock.axle() != Lock.Axle.BOTH) {
                        assertThat(lock.axle() == Lock.Axle.FRONT).isEqualTo(front > rear);
                    }
                }
            }
        });
    }
}
