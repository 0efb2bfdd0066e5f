package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** Identities of statics (closed form); cars drawn by a seed. */
class RoadForcesTest {
    private static final int CARS = 500;

    private static void each(BiConsumer<AxleLoads, SplittableRandom> check) {
        SplittableRandom random = new SplittableRandom(71);
        for (int i = 0; i < CARS; i++) {
            check.accept(Cars.any(random), random);
        }
    }

    private static AirForces air(AxleLoads car, SplittableRandom random) {
        return new AirForces(
                random.nextDouble(-0.3, 1) * car.frontStatic(),
                random.nextDouble(-0.3, 1) * car.rearStatic(),
                random.nextDouble(0, 0.5) * car.weight());
    }

    @Test
    void withoutAirAndEngineItIsThePlainCar() {
        each((car, random) -> {
            RoadForces road = RoadForces.brakesOnly(car);
            double z = random.nextDouble(-0.5, 2);
            double share = random.nextDouble(0, 1);
            assertThat(road.front(z)).isEqualTo(car.front(z));
            assertThat(road.rear(z)).isEqualTo(car.rear(z));
            assertThat(road.footOffG()).isZero();
            assertThat(road.liftOffDecelerationG()).isCloseTo(car.liftOffDecelerationG(), withinPercentage(1e-12));
            assertThat(road.criticalDecelerationG(share))
                    .isCloseTo(FixedSplit.criticalDecelerationG(share, car), within(1e-12));
        });
    }

    /** Moments about the rear contact: front load times wheelbase is weight and inertia, and what the air adds there. */
    @Test
    void theLoadsHoldTheCarUpAndLevel() {
        each((car, random) -> {
            AirForces air = air(car, random);
            RoadForces road = new RoadForces(car, air, 0, 0);
            double z = random.nextDouble(0, road.liftOffDecelerationG());
            assertThat(road.front(z) + road.rear(z)).isCloseTo(road.wholeLoad(), withinPercentage(1e-10));
            double moment = car.frontStatic() * car.wheelbase() + z * car.weight() * car.cgHeight();
            assertThat((road.front(z) - air.front()) * car.wheelbase()).isCloseTo(moment, withinPercentage(1e-10));
        });
    }

    @Test
    void brakesAndAirTogetherGiveTheDeceleration() {
        each((car, random) -> {
            RoadForces road = new RoadForces(car, air(car, random), 0, random.nextDouble(0, 0.2) * car.weight());
            double z = random.nextDouble(0, 2);
            assertThat(road.decelerationG(road.brakeForce(z))).isCloseTo(z, within(1e-12));
            assertThat(road.brakeForce(z))
                    .isCloseTo(z * car.weight() - road.air().drag() - road.rearEngine(), within(1e-9 * car.weight()));
        });
    }

    /** At the critical deceleration both axles use the same grip, whatever the drag. */
    @Test
    void atTheCriticalDecelerationBothAxlesUseTheSameGrip() {
        each((car, random) -> {
            AirForces air = air(car, random);
            RoadForces road = new RoadForces(car, air, 0, 0);
            double z = random.nextDouble(road.footOffG() + 0.01, road.footOffG() + 1);
            if (z < 0.9 * road.liftOffDecelerationG()) {
                double share = road.rear(z) / road.wholeLoad();
                assertThat(road.criticalDecelerationG(share)).isCloseTo(z, within(1e-10));
                double force = road.brakeForce(z);
                assertThat(share * force / road.rear(z))
                        .isCloseTo((1 - share) * force / road.front(z), withinPercentage(1e-9));
            }
        });
    }

    @Test
    void theGreatestDecelerationUsesEveryGripUp() {
        each((car, random) -> {
            RoadForces road = new RoadForces(car, air(car, random), 0, 0);
            double grip = random.nextDouble(0.1, 1.5);
            double z = road.greatestDecelerationG(grip);
            assertThat(grip * (road.front(z) + road.rear(z)) + road.air().drag())
                    .isCloseTo(z * car.weight(), withinPercentage(1e-9));
            LoadSensitiveGrip front = new LoadSensitiveGrip(grip, 0.15, car.frontStatic());
            LoadSensitiveGrip rear = new LoadSensitiveGrip(grip, 0.15, car.rearStatic());
            double falling = road.greatestDecelerationG(front, rear).orElseThrow();
            double sum = front.force(road.front(falling)) + rear.force(road.rear(falling));
            assertThat(sum + road.air().drag()).isCloseTo(falling * car.weight(), withinPercentage(1e-9));
        });
    }

    @Test
    void theForcesGrowWithTheSquareOfTheSpeed() {
        AirForces air = new AirForces(100, -50, 300).at(60, 30);
        assertThat(air).isEqualTo(new AirForces(400, -200, 1200));
        assertThat(air.at(0, 30)).isEqualTo(new AirForces(0, -0.0, 0));
    }

    /** The slope of the grip at the reference load is minus the sensitivity, by its definition. */
    @Test
    void theSensitivityIsTheGripLostPerRiseOfLoad() {
        LoadSensitiveGrip tires = new LoadSensitiveGrip(0.9, 0.12, 4000);
        double slope = (tires.at(4000 * 1.0001) - tires.at(4000 * 0.9999)) / (0.9 * 0.0002);
        assertThat(tires.at(4000)).isEqualTo(0.9);
        assertThat(slope).isCloseTo(-0.12, within(1e-7));
        assertThat(tires.force(5000)).isGreaterThan(tires.force(4000));
        assertThat(tires.force(0)).isZero();
    }

    @Test
    void refusesAnAxleInTheAirAndAnEngineThatPushes() {
        AxleLoads car = new AxleLoads(5000, 4000, 2.4, 0.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RoadForces(car, new AirForces(0, -4000, 0), 0, 0))
                .withMessageContaining("rear");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RoadForces(car, AirForces.NONE, -1, 0))
                .withMessageContaining("frontEngine");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RoadForces(car, AirForces.NONE, 0, 10).criticalDecelerationG(0.3))
                .withMessageContaining("engine");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AirForces(0, 0, -1))
                .withMessageContaining("drag");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadSensitiveGrip(0.9, 1, 4000))
                .withMessageContaining("sensitivity");
    }
}
