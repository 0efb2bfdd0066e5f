package org.brakewright.analysis.heat;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.thermal.GreyIron;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HeatStatesTest {
    private static final double COLD = 293.15;

    private static HeatState heat(WrittenCar car) {
        return requireNonNull(car.analysis().heat());
    }

    private static ScheduleHeat only(WrittenCar car) {
        HeatState state = heat(car);
        assertThat(state.unsolved()).isEmpty();
        return state.schedules().getFirst();
    }

    /** 1/2 x 1000 x 1.05 x 30^2 = 472.5 kJ; two thirds of it in two front rotors of 5 kg, 96 to 98 % into the iron, which hardly cools in 4 s. */
    @Test
    void turnsTheEnergyOfAStopIntoHeat() {
        ScheduleHeat stop = only(HotCars.STOP);
        assertThat(stop.energyJ()).isCloseTo(472_500, within(1.0));
        assertThat(stop.durationS()).isCloseTo(3.75, within(1e-12));
        double all = GreyIron.heated(COLD, 472_500 * 2 / 3.0 / 2 / 5);
        assertThat(stop.front().rotorPeakK() - COLD).isBetween(0.94 * (all - COLD), all - COLD);
        double rear = GreyIron.heated(COLD, 472_500 / 3.0 / 2 / 5);
        assertThat(stop.rear().rotorPeakK() - COLD).isBetween(0.90 * (rear - COLD), rear - COLD);
        assertThat(stop.front().facePeakK()).isGreaterThan(stop.front().rotorPeakK());
    }

    static Stream<WrittenCar> everyKind() {
        return Stream.of(HotCars.STOP, HotCars.RULE, HotCars.SNUBS, HotCars.HILL, drums(), log(), events());
    }

    /** Balance: what friction brings is stored or given to the air, to 1e-6, whatever the schedule; half an hour of standing included. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void losesNoHeat(WrittenCar car) {
        assertThat(only(car).energyErrorShare()).isLessThan(1e-6);
    }

    /** Steps a hundred times finer move no peak by more than 0.05 K, ten times coarser ones by 0.1 K: the steps do not make the answer. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void doesNotDependOnTheSteps(WrittenCar car) {
        ScheduleHeat usual = only(car);
        for (double factor : new double[] {0.01, 0.5, 10}) {
            ScheduleHeat other = with(car, new Precision(1e-4 * factor, 1e-7 * factor));
            double moved = factor > 1 ? 0.1 : 0.05;
            closeTo(usual.front(), other.front(), moved);
            closeTo(usual.rear(), other.rear(), moved);
        }
    }

    private static ScheduleHeat with(WrittenCar car, Precision precision) {
        ResolvedBuild build = car.resolved();
        ChainCurve curve = ChainCurve.of(Chain.of(build));
        HeatState state = HeatStates.of(build, curve, car.analysis().hardStop(), precision);
        return requireNonNull(state).schedules().getFirst();
    }

    private static void closeTo(AxleHeat one, AxleHeat other, double moved) {
        assertThat(one.rotorPeakK()).isCloseTo(other.rotorPeakK(), within(moved));
        assertThat(one.facePeakK()).isCloseTo(other.facePeakK(), within(moved));
        assertThat(one.liningPeakK()).isCloseTo(other.liningPeakK(), within(moved));
        assertThat(one.fluidPeakK()).isCloseTo(other.fluidPeakK(), within(moved));
    }

    /** UN R13-H type I: 15 snubs from 120 km/h (80 % of 180 is more) to half, each 45 s. 15 x 1/2 x 1050 x (33.33^2 - 16.67^2) = 6.5625 MJ. */
    @Test
    void drivesTheSnubsOfTheRule() {
        ScheduleHeat fade = only(HotCars.RULE);
        assertThat(fade.energyJ()).isCloseTo(6_562_500, within(20.0));
        assertThat(fade.durationS()).isCloseTo(14 * 45 + 16.6666667 / 3, within(1e-6));
        assertThat(fade.front().rotorPeakK()).isBetween(COLD + 250, COLD + 600);
        assertThat(only(HotCars.RULE.with("car.top_speed: 125 km/h")).energyJ())
                .isCloseTo(15 * 0.5 * 1050 * 0.75 * Math.pow(100 / 3.6, 2), within(20.0));
    }

    /** m g sin, 1000 x 9.80665 x 0.08/sqrt(1.0064) x 15 m/s x 400 s; turning parts do not change their speed. */
    @Test
    void holdsTheCarOnTheHill() {
        double power = 9806.65 * 0.08 / Math.sqrt(1.0064) * 15;
        assertThat(only(HotCars.HILL).energyJ()).isCloseTo(power * 400, within(5.0));
        ScheduleHeat inGear = only(HotCars.HILL.with("""
                car.engine_braking.driven_axle: rear
                car.engine_braking.deceleration: 0.3 m/s2
                """));
        assertThat(inGear.energyJ()).isCloseTo((power - 300 * 15) * 400, within(5.0));
    }

    /** The same three snubs written one by one: back to speed over half the time between, held for the other half. */
    @Test
    void doesNotCareHowASnubIsWritten() {
        WrittenCar log = HotCars.CAR.with("""
                heat.schedules[0].kind: speed_log
                heat.schedules[0].name: log
                heat.schedules[0].points[0].time: 0 s
                heat.schedules[0].points[0].speed: 30 m/s
                heat.schedules[0].points[1].time: 4 s
                heat.schedules[0].points[1].speed: 10 m/s
                """);
        WrittenCar events = HotCars.CAR.with("""
                heat.schedules[0].kind: events
                heat.schedules[0].name: lap
                heat.schedules[0].events[0].start: 0 s
                heat.schedules[0].events[0].from_speed: 30 m/s
                heat.schedules[0].events[0].to_speed: 10 m/s
                heat.schedules[0].events[0].deceleration: 5 m/s2
                """);
        ScheduleHeat one = only(HotCars.SNUBS.with("heat.schedules[0].count: 1"));
        assertThat(only(log).front()).isEqualTo(one.front());
        assertThat(only(events).front()).isEqualTo(one.front());
        ScheduleHeat laps = only(events.with("heat.schedules[0].laps: 3\nheat.schedules[0].lap_time: 24 s"));
        assertThat(laps.energyJ()).isCloseTo(3 * one.energyJ(), withinPercentage(1e-4));
    }

    /**
     * By hand: the front falls to a half at once, the rear keeps all. The same push then gives 2/3 x 1/2 + 1/3 = 2/3 of the stop, needs 3/2 of the
     * effort, and the front share falls from 2/3 to 1/2, where the rear locks first: ideal front share at 0.9 is 0.5 + 0.2 z.
     */
    @Test
    void findsBalanceAndEffortAgainHot() {
        HotBrakes hot = requireNonNull(heat(faded("0.2")).hot());
        assertThat(hot.frontForceShare()).isCloseTo(0.5, within(1e-9));
        assertThat(hot.rearForceShare()).isCloseTo(1, within(1e-9));
        assertThat(hot.decelerationShare()).isCloseTo(2.0 / 3, within(1e-6));
        assertThat(requireNonNull(hot.effortN()) / hot.coldEffortN()).isCloseTo(1.5, within(1e-6));
        assertThat(hot.frontShare()).isCloseTo(0.5, within(1e-6));
        HotLoadCase driver = hot.loadCases().getFirst();
        assertThat(requireNonNull(driver.criticalDecelerationG())).isLessThan(0.15);
        assertThat(requireNonNull(driver.gripLock()).axle()).isEqualTo(Lock.Axle.REAR);
    }

    /** The more the front has faded, the more of the heat goes to the rear. */
    @Test
    void sendsTheHeatWhereTheFrictionIs() {
        double even = only(faded("0.4")).rear().rotorPeakK();
        double faded = only(faded("0.2")).rear().rotorPeakK();
        double rise = GreyIron.heat(faded) / GreyIron.heat(even);
        assertThat(rise).isCloseTo(1.5, withinPercentage(2));
    }

    private static WrittenCar faded(String friction) {
        return HotCars.STOP.with("heat.front.friction_curve[0].friction: " + friction
                + "\nheat.front.friction_curve[1].friction: " + friction);
    }

    @Test
    void saysWhenTheCurveEnds() {
        assertThat(only(HotCars.RULE).front().beyondCurve()).isFalse();
        WrittenCar shortCurve = HotCars.RULE.with("heat.front.friction_curve[1].temperature: 150 °C");
        assertThat(only(shortCurve).front().beyondCurve()).isTrue();
    }

    /** Air through the middle cools, a duct cools, standing afterwards soaks heat into the fluid. */
    @Test
    void coolsWhereAirGoes() {
        ScheduleHeat plain = only(HotCars.RULE);
        ScheduleHeat vented = only(HotCars.RULE.with("heat.front.vent_gap: 3 mm\nheat.front.vent_count: 36"));
        ScheduleHeat ducted = only(HotCars.RULE.with("heat.front.airflow: 1.2"));
        assertThat(vented.front().rotorPeakK()).isLessThan(plain.front().rotorPeakK() - 5);
        assertThat(ducted.front().rotorPeakK()).isLessThan(plain.front().rotorPeakK() - 20);
        assertThat(ducted.front().timeConstantS()).isLessThan(plain.front().timeConstantS());
        assertThat(plain.front().fluidPeakS()).isGreaterThan(plain.durationS());
        assertThat(requireNonNull(ducted.coolingTimeS())).isLessThan(requireNonNull(plain.coolingTimeS()));
        assertThat(only(HotCars.STOP.with("heat.schedules[0].from_speed: 10 m/s"))
                        .coolingTimeS())
                .isEqualTo(0.0);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(Cars.TWIN.analysis().heat()).isNull();
    }

    private static WrittenCar drums() {
        return HotCars.SNUBS.without("rear").without("heat.rear").with("""
                        rear.kind: drum
                        rear.shoes: leading_trailing
                        rear.brake_factor: 2.2
                        rear.drum_radius: 110 mm
                        rear.wheel_cylinder: 19 mm
                        heat.rear.rotor_mass: 6 kg
                        heat.rear.drum_width: 45 mm
                        """);
    }

    private static WrittenCar log() {
        return HotCars.CAR.with("""
                heat.schedules[0].kind: speed_log
                heat.schedules[0].name: log
                heat.schedules[0].points[0].time: 0 s
                heat.schedules[0].points[0].speed: 30 m/s
                heat.schedules[0].points[1].time: 2 s
                heat.schedules[0].points[1].speed: 22 m/s
                heat.schedules[0].points[2].time: 5 s
                heat.schedules[0].points[2].speed: 4 m/s
                heat.schedules[0].points[3].time: 10 s
                heat.schedules[0].points[3].speed: 20 m/s
                """);
    }

    private static WrittenCar events() {
        return HotCars.CAR.with("""
                heat.schedules[0].kind: events
                heat.schedules[0].name: laps
                heat.schedules[0].events[0].start: 6 s
                heat.schedules[0].events[0].from_speed: 45 m/s
                heat.schedules[0].events[0].to_speed: 15 m/s
                heat.schedules[0].events[0].deceleration: 8 m/s2
                heat.schedules[0].events[1].start: 25 s
                heat.schedules[0].events[1].from_speed: 35 m/s
                heat.schedules[0].events[1].to_speed: 0 m/s
                heat.schedules[0].events[1].deceleration: 6 m/s2
                heat.schedules[0].laps: 6
                heat.schedules[0].lap_time: 48 s
                """);
    }
}
