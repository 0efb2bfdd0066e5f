package org.brakewright.analysis.pedal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Objects;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.pedal.PedalState.AtWork;
import org.junit.jupiter.api.Test;

/** Closed forms of the slider-crank (engineering mechanics, any textbook), through the whole car. */
class PedalStatesTest {
    private static final WrittenCar HUNG = Cars.TWIN.without("pedal.ratio").with(Cars.HUNG_PEDAL);

    @Test
    void ratioAndRodAngleFollowTheSliderCrank() {
        PedalState pedal = HUNG.analysis().pedal();
        double turned = 0.150 / 0.300;
        double drop = 0.060 * (1 - Math.cos(turned));
        double along = Math.sqrt(0.120 * 0.120 - drop * drop);
        double advance = 0.060 * Math.cos(turned) - drop * 0.060 * Math.sin(turned) / along;
        assertThat(pedal.ratioAtRest()).isCloseTo(5, within(1e-12));
        assertThat(pedal.ratioAtStop()).isCloseTo(0.300 / advance, within(1e-9));
        assertThat(pedal.greatestRatio()).isCloseTo(pedal.ratioAtStop(), within(1e-9));
        assertThat(pedal.leastRatio()).isCloseTo(5, within(1e-12));
        assertThat(pedal.stroke()).hasSize(9);
        assertThat(pedal.stroke().getLast().sideShare()).isCloseTo(drop / along, within(1e-9));
        assertThat(pedal.overCentreM()).isNull();
    }

    /** In line when the socket lies 60 + 120 mm from the pivot. */
    @Test
    void tellsWhereTheRodComesIntoLineWithThePivot() {
        PedalState pedal = HUNG.with("pedal.travel_to_stop: 400 mm").analysis().pedal();
        double turned = Math.PI / 2 - Math.asin(60.0 / 180);
        assertThat(Objects.requireNonNull(pedal.overCentreM())).isCloseTo(0.300 * turned, within(1e-6));
        assertThat(pedal.greatestRatio()).isCloseTo(Lever.RUNAWAY * 5, within(1e-6));
    }

    /** Virtual work: what the force gains the travel loses, on soft calipers and all. */
    @Test
    void forceGainsWhatTravelLoses() {
        Rig rig = Rig.of(HUNG.with("""
                front.running_clearance: 0.5 mm
                rear.running_clearance: 0.5 mm
                front.caliper_spread: 0.05 mm/MPa
                rear.caliper_spread: 0.05 mm/MPa
                """));
        Pushed less = rig.push(299);
        Pushed pushed = rig.push(300);
        Pushed more = rig.push(301);
        double byTravel = (more.padTravel() - less.padTravel())
                / (more.apply().rodTravel() - less.apply().rodTravel());
        double byForce = pushed.state().thrust() / (0.8 * pushed.state().pedalForce());
        assertThat(byForce).isCloseTo(byTravel, withinPercentage(0.01));
        assertThat(byForce).isGreaterThan(5.001);
    }

    /** Masters 6 mm further apart than the clevises lean rods of 90 mm by 3 in 90; each gets half of the thrust. */
    @Test
    void masterSpacingPushesThePistonsSideways() {
        WrittenCar car = Cars.TWIN.with("apply.balance_bar.master_spacing: 66 mm");
        AtWork work = Objects.requireNonNull(car.analysis().pedal().atHardStop());
        double thrust = 5 * 0.8 * car.hardStop().point().pedalForceN();
        assertThat(work.sideForceN()).isCloseTo(thrust / 2 * 3 / 90, withinPercentage(1e-6));
        assertThat(work.rodAngleRad()).isZero();
        assertThat(work.rodOffAxisRad()).isCloseTo(Math.atan(3.0 / 90), within(1e-12));
    }
}
