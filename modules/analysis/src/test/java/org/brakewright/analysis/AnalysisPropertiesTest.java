package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Objects;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.pedal.Travel;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
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
            ChainState before = chain.at(0);
            for (int force = 25; force <= 2000; force += 25) {
                ChainState now = chain.at(force);
                assertThat(now.frontPressure()).isGreaterThanOrEqualTo(before.frontPressure());
                assertThat(now.rearPressure()).isGreaterThanOrEqualTo(before.rearPressure());
                assertThat(now.totalForce()).isGreaterThanOrEqualTo(before.totalForce());
                assertThat(rig.travel().at(now).padM())
                        .isGreaterThan(rig.travel().at(before).padM());
                before = now;
            }
        });
    }

    /** The broken line is the chain itself: between two bends nothing else happens. */
    @Test
    void theBrokenLineIsTheChain() {
        RandomCars.each(BUILDS, rig -> {
            for (double force = 3; force < 3000; force *= 1.7) {
                ChainState direct = rig.chain().at(force);
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
     * What the foot puts in over a step, less friction and mount, is what springs and fluid take: taken at one state of the
     * step, virtual work of bar, masters and fluid balances whatever the shape of the volumes. A valve only loses.
     */
    @Test
    void energyIsNeverMade() {
        RandomCars.each(BUILDS, rig -> {
            Chain chain = rig.chain().unassisted();
            for (double force = 20; force < 1500; force *= 1.5) {
                Work work = Work.between(rig, chain, force, force + 10);
                assertThat(work.in()).isGreaterThanOrEqualTo(work.fluid() * (1 - 1e-9) - 1e-12);
                if (rig.build().apply().valve().isEmpty() && work.pressed()) {
                    assertThat(work.in()).isCloseTo(work.fluid() + work.springs(), withinPercentage(1e-6));
                }
            }
        });
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
            ChainState middle = chain.at((low + high) / 2);
            Travel from = rig.travel().at(chain.at(low));
            Travel to = rig.travel().at(chain.at(high));
            double mount = (high - low) / rig.build().pedal().mountStiffness();
            double in = middle.pedalForce() * rig.build().pedal().efficiency() * (to.padM() - from.padM() - mount);
            double front = to.frontStrokeM() - from.frontStrokeM();
            double rear = to.rearStrokeM() - from.rearStrokeM();
            ResolvedApply.Master first = master(rig, true);
            ResolvedApply.Master second = master(rig, false);
            double fluid = middle.frontPressure() * first.area() * front + middle.rearPressure() * second.area() * rear;
            double springs = first.springForce() * front + second.springForce() * rear;
            return new Work(in, fluid, springs, middle.frontPressure() > 0 && middle.rearPressure() > 0);
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
