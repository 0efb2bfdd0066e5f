package org.brakewright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.kernel.ode.Integration;
import org.brakewright.kernel.ode.Integrator;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.kernel.ode.Rates;
import org.brakewright.kernel.ode.Span;
import org.brakewright.kernel.ode.Watcher;
import org.brakewright.kernel.thermal.Housing;
import org.brakewright.kernel.thermal.Linings;
import org.brakewright.kernel.thermal.LumpCooling;
import org.brakewright.kernel.thermal.Rotor;
import org.brakewright.kernel.thermal.RotorSurface;
import org.brakewright.kernel.thermal.SnubSeries;
import org.brakewright.kernel.thermal.Surroundings;
import org.brakewright.kernel.thermal.WheelFluid;
import org.brakewright.kernel.thermal.WheelHeat;
import org.junit.jupiter.api.Test;

/** A wheel's lumps followed by the integrator, held against balances and closed forms. */
class WheelHeatRunTest {
    private static final double AMBIENT = 293.15;
    private static final Precision FINE = new Precision(1e-7, 1e-10);

    /** All heat that friction brings is stored or given to the air, to 1e-6 of it, over five hard snubs and a rest. */
    @Test
    void keepsTheEnergy() {
        WheelHeat wheel = wheel();
        double[] state = {AMBIENT, AMBIENT, AMBIENT, AMBIENT, 0};
        double brought = 0;
        for (int snub = 0; snub < 5; snub++) {
            brought += 25_000 * 4;
            run(wheel, state, 25_000, 4);
            run(wheel, state, 0, 26);
        }
        assertThat(wheel.stored(state, 0) + state[4]).isCloseTo(brought, within(1e-6 * brought));
        assertThat(state[WheelHeat.ROTOR]).isGreaterThan(AMBIENT + 100);
        assertThat(state[4]).isGreaterThan(0.1 * brought);
    }

    /** Halving the error allowed, five times over and far beyond, moves no temperature by more than 1e-4 K: no answer hangs on the steps. */
    @Test
    void doesNotDependOnTheSteps() {
        double[] coarse = cooled(new Precision(1e-3, 1e-6));
        double[] fine = cooled(new Precision(1e-3 / 32, 1e-6 / 32));
        double[] finest = cooled(new Precision(1e-10, 1e-12));
        for (int i = 0; i < WheelHeat.NODES; i++) {
            assertThat(coarse[i]).isCloseTo(fine[i], within(1e-4));
            assertThat(coarse[i]).isCloseTo(finest[i], within(1e-4));
        }
    }

    /**
     * Closed form: a rotor whose cooling and specific heat hardly change, alone, cools by the exponential law between the time constants at
     * both ends.
     */
    @Test
    void coolsByTheExponentialLaw() {
        WheelHeat alone = new WheelHeat(wheel().rotor(), apart(), wheel().housing(), wheel().fluid());
        Surroundings around = new Surroundings(20, 66, AMBIENT);
        double start = AMBIENT + 40;
        double[] state = {start, AMBIENT, AMBIENT, AMBIENT, 0};
        run(alone, state, 0, 300);
        Rotor rotor = alone.rotor();
        double slow = left(rotor, start, around);
        double quick = left(rotor, AMBIENT + 1, around);
        assertThat(state[WheelHeat.ROTOR] - AMBIENT).isBetween(Math.min(slow, quick), Math.max(slow, quick));
        assertThat(slow).isCloseTo(quick, withinPercentage(12));
    }

    private static double left(Rotor rotor, double temperature, Surroundings around) {
        LumpCooling law = new LumpCooling(rotor.capacity(temperature), rotor.conductance(temperature, around));
        return law.excess(40, 0, 300);
    }

    /** Closed form: dragging for long, what friction brings into the rotor alone equals what it loses at its last temperature. */
    @Test
    void settlesUnderADrag() {
        WheelHeat alone = new WheelHeat(wheel().rotor(), apart(), wheel().housing(), wheel().fluid());
        double[] state = {AMBIENT, AMBIENT, AMBIENT, AMBIENT, 0};
        run(alone, state, 3000, 7200);
        double rotor = state[WheelHeat.ROTOR];
        double loss = alone.rotor().loss(rotor, new Surroundings(20, 66, AMBIENT));
        assertThat(loss).isCloseTo(alone.rotorShare(rotor) * 3000, withinPercentage(1e-4));
    }

    /** A series of short snubs of one lump follows the geometric series (Limpert's form) within what its cooling changes. */
    @Test
    void followsTheSnubSeries() {
        WheelHeat alone = new WheelHeat(wheel().rotor(), apart(), wheel().housing(), wheel().fluid());
        Surroundings around = new Surroundings(20, 66, AMBIENT);
        double[] state = {AMBIENT, AMBIENT, AMBIENT, AMBIENT, 0};
        for (int snub = 0; snub < 15; snub++) {
            run(alone, state, 6000, 1);
            if (snub < 14) {
                run(alone, state, 0, 44);
            }
        }
        double peak = state[WheelHeat.ROTOR];
        double middle = 0.5 * (peak + AMBIENT);
        Rotor rotor = alone.rotor();
        double kept = SnubSeries.kept(rotor.conductance(middle, around), 45, rotor.capacity(middle));
        double rise = alone.rotorShare(middle) * 6000 / rotor.capacity(middle);
        assertThat(peak - AMBIENT).isCloseTo(new SnubSeries(rise, kept).after(15), withinPercentage(3));
    }

    /** Heat runs downhill: a hot rotor warms pads, then fluid, then housing, and none gets hotter than what feeds it. */
    @Test
    void soaksFromTheRotorOutward() {
        double[] state = {AMBIENT + 400, AMBIENT, AMBIENT, AMBIENT, 0};
        follow(wheel(), state, new Drive(0, 0, 900), FINE);
        assertThat(state[WheelHeat.ROTOR]).isGreaterThan(state[WheelHeat.LININGS]);
        assertThat(state[WheelHeat.LININGS]).isGreaterThan(state[WheelHeat.FLUID]);
        assertThat(state[WheelHeat.FLUID]).isGreaterThan(state[WheelHeat.HOUSING]);
        assertThat(state[WheelHeat.HOUSING]).isGreaterThan(AMBIENT + 5);
    }

    private static double[] cooled(Precision precision) {
        double[] state = {AMBIENT, AMBIENT, AMBIENT, AMBIENT, 0};
        follow(wheel(), state, new Drive(25_000, 25, 5), precision);
        follow(wheel(), state, new Drive(0, 25, 60), precision);
        return state;
    }

    private static void run(WheelHeat wheel, double[] state, double power, double duration) {
        follow(wheel, state, new Drive(power, 20, duration), FINE);
    }

    /**
     * A stretch of driving.
     *
     * @param power W
     * @param speed m/s
     * @param duration s
     */
    private record Drive(double power, double speed, double duration) {}

    /** The last place of the state gathers what is given to the air, J. */
    private static void follow(WheelHeat wheel, double[] state, Drive drive, Precision precision) {
        Surroundings around = new Surroundings(drive.speed(), drive.speed() / 0.303, AMBIENT);
        Rates rates = (time, at, change) -> change[WheelHeat.NODES] = wheel.rates(drive.power(), around, at, 0, change);
        Integration ended =
                Integrator.follow(rates, new Span(0, drive.duration(), 0), state, precision, Watcher.NOBODY);
        assertThat(ended).isInstanceOf(Integration.Reached.class);
    }

    private static Linings apart() {
        return new Linings(600, 1, 0.0080, 0, 0);
    }

    private static WheelHeat wheel() {
        return new WheelHeat(
                new Rotor(5.0, new RotorSurface.Disc(0.26, 0.10, 0.7), 0.09, 0.5, 0.060),
                new Linings(600, 2000, 0.0080, 2.4, 1.2),
                new Housing(1800, 0.05, 0.15, 0.7, 0.3),
                new WheelFluid(80, 0.5, 3.0));
    }
}
