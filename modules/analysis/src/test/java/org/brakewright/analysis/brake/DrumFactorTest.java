package org.brakewright.analysis.brake;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Locale;
import java.util.SplittableRandom;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.kernel.friction.BrakeFactor;
import org.brakewright.kernel.friction.DrumShoe;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.resolved.ResolvedBrake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Brake factors from geometry, read off a whole car and held against published drums and a second method. */
class DrumFactorTest {
    private static final int RUNS = 300;

    /** Shigley's Mechanical Engineering Design, problem 16-1: row C1 of the check values. */
    private static final WrittenCar C1 = drums("""
            rear.shoes: leading_trailing
            rear.drum_radius: 150 mm
            rear.lining_friction: 0.28
            rear.shoe_geometry.pivot_distance: 125 mm
            rear.shoe_geometry.actuation_arm: 216.50635 mm
            rear.shoe_geometry.lining_start: 0 deg
            rear.shoe_geometry.lining_end: 120 deg
            rear.shoe_geometry.other_lining_start: 0 deg
            rear.shoe_geometry.other_lining_end: 120 deg
            rear.shoe_geometry.lining_width: 40 mm
            """);

    private static WrittenCar drums(String rear) {
        return Cars.TANDEM
                .without("rear")
                .with("rear.kind: drum\nrear.wheel_cylinder: 22 mm\nrear.threshold_pressure: 0 bar")
                .with(rear);
    }

    private static DrumResult rear(WrittenCar car) {
        return car.analysis().drums().getFirst();
    }

    private static ShoeResult shoes(WrittenCar car) {
        return requireNonNull(rear(car).geometry());
    }

    /** 277.6 and 144.4 N m of 2.2 kN on 150 mm; what the chain uses is that factor. */
    @Test
    void theTwoShoeDrumOfShigley() {
        double factor = (277.6 + 144.4) / (2200 * 0.150);
        assertThat(requireNonNull(shoes(C1).factorForward())).isCloseTo(factor, withinPercentage(0.02));
        assertThat(requireNonNull(shoes(C1).firstShoeShare())).isCloseTo(277.6 / 422.0, within(1e-4));
        assertThat(C1.resolved().rear())
                .isInstanceOfSatisfying(
                        ResolvedBrake.Drum.class,
                        drum -> assertThat(drum.brakeFactor()).isCloseTo(factor, withinPercentage(0.02)));
    }

    /** 734 kPa under 2.2 kN on a lining of 40 mm; here the push is the hard stop's pressure on a bore of 22 mm. */
    @Test
    void theLiningPressureOfShigley() {
        double push = C1.hardStop().point().rearPressurePa() * Math.PI / 4 * 0.022 * 0.022;
        assertThat(requireNonNull(shoes(C1).liningPressurePa())).isCloseTo(734e3 * push / 2200, withinPercentage(0.1));
    }

    /** V. B. Bhandari, Design of Machine Elements, example 12.9 (row C3): 5025.46 N on each of four shoes hold 2181.61 N m. */
    @Test
    void theFourShoeDrumOfBhandari() {
        WrittenCar car = drums("""
                rear.shoes: leading_trailing
                rear.drum_radius: 250 mm
                rear.lining_friction: 0.3
                rear.shoe_geometry.pivot_distance: 200 mm
                rear.shoe_geometry.actuation_arm: 200 mm
                rear.shoe_geometry.lining_start: 15 deg
                rear.shoe_geometry.lining_end: 75 deg
                """);
        assertThat(requireNonNull(shoes(car).factorForward()))
                .isCloseTo(2181.6143 / 2 / (5025.4576 * 0.250), withinPercentage(1e-4));
    }

    /**
     * The same drum with linings that have lost a quarter: Shigley's moments of friction and pressure by hand with 0.21 for
     * 0.28. Per unit of pressure the normal moment is the same 0.28/0.21 aside, so the leading shoe's factor is
     * f/(1 - 0.75 m) and the trailing one's f/(1 + 0.75 m) of 0.75 the working ones, m the ratio of both moments.
     */
    @Test
    void hotLiningsWorkThroughTheShoes() {
        double leading = 277.6 / (2200 * 0.150);
        double trailing = 144.4 / (2200 * 0.150);
        // leading = k / (n - m), trailing = k / (n + m) at 0.28, in units with k = 1
        double normal = (1 / leading + 1 / trailing) / 2;
        double moment = (1 / trailing - 1 / leading) / 2;
        double hot = 0.75 / (normal - 0.75 * moment) + 0.75 / (normal + 0.75 * moment);
        ResolvedBrake rear =
                C1.with("rear.lining_friction_hot: 0.21").resolved().rear();
        assertThat(rear.frictionStates().hot()).isCloseTo(hot / (leading + trailing), withinPercentage(0.05));
        assertThat(C1.with("rear.lining_friction_wet: 0.28")
                        .resolved()
                        .rear()
                        .frictionStates()
                        .wet())
                .isCloseTo(1, within(1e-12));
        assertThat(C1.with("rear.brake_factor_hot: 0.9")
                        .resolved()
                        .rear()
                        .frictionStates()
                        .hot())
                .isCloseTo(0.9 / (leading + trailing), withinPercentage(0.05));
    }

    @Test
    void aStateGivenTwiceOrWithoutShoesIsRefused() {
        assertThat(C1.with("rear.lining_friction_hot: 0.21\nrear.brake_factor_hot: 0.9")
                        .problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.path()).isEqualTo("rear.lining_friction_hot");
                    assertThat(problem.message()).contains("twice");
                });
        WrittenCar factor = drums("""
                rear.shoes: leading_trailing
                rear.drum_radius: 150 mm
                rear.brake_factor: 2
                rear.lining_friction_wet: 0.2
                """);
        assertThat(factor.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo("rear.lining_friction_wet");
            assertThat(problem.allowed()).contains("shoe_geometry", "brake_factor_wet");
        });
    }

    /** Forces across the centre line and moments about the pivots, summed piece by piece over each lining. */
    @Test
    void selfEnergisingShoesStandInBalance() {
        SplittableRandom random = new SplittableRandom(20_261_125);
        for (int i = 0; i < RUNS; i++) {
            ShoePair pair = servo(random);
            double friction = random.nextDouble(0.1, 0.35);
            if (pair.forward(friction) instanceof BrakeFactor.Stable stable) {
                assertThat(stable.value()).isCloseTo(summed(pair, friction), withinPercentage(0.01));
            }
        }
    }

    /** The whole drum seen from behind the car: the shoes change places and every angle is counted from the other end. */
    @Test
    void rollingBackwardIsRollingForwardSeenFromBehind() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < RUNS; i++) {
            ShoePair pair = servo(random);
            ShoePair behind = new ShoePair(
                    ShoeArrangement.SELF_ENERGISING,
                    lined(pair.first(), pair.second()),
                    lined(pair.second(), pair.first()));
            double friction = random.nextDouble(0.1, 0.3);
            if (pair.backward(friction) instanceof BrakeFactor.Stable stable) {
                assertThat(stable.value()).isCloseTo(summed(behind, friction), withinPercentage(0.01));
            }
        }
    }

    private static DrumShoe lined(DrumShoe place, DrumShoe lining) {
        return new DrumShoe(
                place.pivotDistance(),
                place.drumRadius(),
                Math.PI - lining.toeAngle(),
                Math.PI - lining.heelAngle(),
                place.actuationArm());
    }

    private static ShoePair servo(SplittableRandom random) {
        double radius = random.nextDouble(0.1, 0.18);
        double link = radius * random.nextDouble(0.7, 0.85);
        double anchor = radius * random.nextDouble(0.75, 0.9);
        double cylinder = anchor * random.nextDouble(0.6, 1);
        double start = random.nextDouble(0.2, 0.8);
        return new ShoePair(
                ShoeArrangement.SELF_ENERGISING,
                new DrumShoe(link, radius, start, random.nextDouble(1.8, 2.5), link + cylinder),
                new DrumShoe(anchor, radius, start, random.nextDouble(1.8, 2.6), link + anchor));
    }

    /** Friction force of both shoes over a push of 1 N, drum turning from the first shoe's tip to the link. */
    private static double summed(ShoePair pair, double friction) {
        Cut first = Cut.of(pair.first(), friction);
        Cut second = Cut.of(pair.second(), friction);
        double height = pair.first().actuationArm() - pair.first().pivotDistance();
        double pressure = pair.first().actuationArm() / first.moment();
        double link = first.inward() * pressure - 1;
        double other = (link * pair.second().actuationArm() + pair.second().pivotDistance() - height) / second.moment();
        return (first.torque() * pressure + second.torque() * other)
                / pair.first().drumRadius();
    }

    /** The drum's forces on a shoe for a lining force of sin(angle) per radian: inward, about the pivot, about the centre. */
    private record Cut(double inward, double moment, double torque) {
        static Cut of(DrumShoe shoe, double friction) {
            int pieces = 2000;
            double step = (shoe.toeAngle() - shoe.heelAngle()) / pieces;
            double inward = 0;
            double moment = 0;
            double torque = 0;
            for (int i = 0; i < pieces; i++) {
                double angle = shoe.heelAngle() + (i + 0.5) * step;
                double normal = Math.sin(angle) * step;
                double x = -normal * (Math.sin(angle) + friction * Math.cos(angle));
                double y = normal * (friction * Math.sin(angle) - Math.cos(angle));
                inward -= x;
                moment -= shoe.drumRadius() * Math.sin(angle) * y
                        - (shoe.drumRadius() * Math.cos(angle) - shoe.pivotDistance()) * x;
                torque += shoe.drumRadius() * friction * normal;
            }
            return new Cut(inward, moment, torque);
        }
    }

    /** In reverse two leading shoes are two trailing ones; alike leading and trailing shoes only change places. */
    @Test
    void reverseIsWhatTheArrangementSays() {
        WrittenCar two = C1.without("rear.shoe_geometry.other_lining_start")
                .without("rear.shoe_geometry.other_lining_end")
                .with("rear.shoes: two_leading");
        assertThat(requireNonNull(shoes(two).factorForward())).isCloseTo(2 * 0.841284, within(1e-5));
        assertThat(requireNonNull(shoes(two).factorBackward())).isCloseTo(2 * 0.437517, within(1e-5));
        assertThat(requireNonNull(shoes(C1).factorBackward()))
                .isCloseTo(requireNonNull(shoes(C1).factorForward()), withinPercentage(1e-9));
    }

    /** The factor bends upward in friction, so more of it adds more than less of it takes. */
    @ParameterizedTest
    @ValueSource(strings = {"leading_trailing", "two_leading", "self_energising"})
    void theFactorRisesWithFriction(String arrangement) {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < RUNS; i++) {
            ShoePair drawn = servo(random);
            ShoePair pair = new ShoePair(
                    ShoeArrangement.valueOf(arrangement.toUpperCase(Locale.ROOT)), drawn.first(), drawn.second());
            double friction = random.nextDouble(0.05, 0.9) * pair.selfLockFriction();
            double less = value(pair.forward(friction * 0.9));
            assertThat(value(pair.forward(friction))).isGreaterThan(less);
            assertThat(value(pair.backward(friction))).isGreaterThan(value(pair.backward(friction * 0.9)));
        }
    }

    private static double value(BrakeFactor factor) {
        assertThat(factor).isInstanceOf(BrakeFactor.Stable.class);
        return ((BrakeFactor.Stable) factor).value();
    }

    /** A locking drum gives finite numbers with a factor of 10, and says that they are only reckoned. */
    @Test
    void aLockingDrumStaysFinite() {
        WrittenCar car = C1.with("rear.lining_friction: 0.89");
        assertThat(rear(car).brakeFactor()).isEqualTo(ShoePair.MOST_FACTOR);
        assertThat(shoes(car).factorForward()).isNull();
        assertThat(shoes(car).beyondReckoning()).isTrue();
        assertThat(shoes(car).largestChange()).isInfinite();
        assertThat(car.hardStop().point().rearForceN()).isFinite();
    }

    /** Lining friction moves the whole car: the force of the rear goes with the factor. */
    @Test
    void theChainFollowsTheFriction() {
        double more = C1.analysis().drums().getFirst().brakeFactor();
        double moved =
                ((ResolvedBrake.Drum) C1.resolved("rear.lining_friction", 0.308).rear()).brakeFactor();
        assertThat(moved / more).isGreaterThan(1.1);
        assertThat(moved).isCloseTo(requireNonNull(shoes(C1).factorAtMoreFriction()), withinPercentage(1e-9));
    }

    @Test
    void aGivenFactorHasNoGeometry() {
        WrittenCar car = drums("rear.shoes: two_leading\nrear.drum_radius: 115 mm\nrear.brake_factor: 3.1");
        assertThat(rear(car)).isEqualTo(new DrumResult(DrumResult.Where.REAR, ShoeArrangement.TWO_LEADING, 3.1, null));
    }
}
