package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.vehicle.HardStop;
import org.junit.jupiter.api.Test;

/** The chain from foot to tyre against published examples, each turned into a car that does the same. */
class WorkedChainTest {
    private static final double INCH = 0.0254;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double PSI = 6894.757293168;

    /** 2e-6 relative: the six digits that the check values print. */
    private static final Percentage PRINTED = withinPercentage(2e-4);

    /** g of the check values, m/s2. The product's is 9.80665, so brake forces and not shares of g are compared. */
    private static final double G_OF_ROWS = 9.81;

    /** Row B18, CONSTRUCTED closed form: the whole chain, 420 N at the pad, bar 3 mm to the front of 60 mm. */
    private static final WrittenCar WHOLE_CHAIN = Cars.TWIN.with("""
            car.front_tyre_radius: 305 mm
            car.rear_tyre_radius: 305 mm
            car.load_cases[0].front_axle: 525 kg
            car.load_cases[0].rear_axle: 525 kg
            front.pistons[0]: 41.3 mm
            front.pistons[1]: 41.3 mm
            front.pad_friction: 0.42
            front.effective_radius: 118 mm
            rear.pistons[0]: 31.75 mm
            rear.pistons[1]: 31.75 mm
            rear.pad_friction: 0.42
            rear.effective_radius: 112 mm
            pedal.ratio: 5.2
            pedal.efficiency: 0.92
            apply.front_master.bore: 19.05 mm
            apply.rear_master.bore: 20.64 mm
            apply.balance_bar.offset: 3 mm
            """);

    @Test
    void aPushOfTheWholeChainGivesItsPressuresTorquesAndBrakeForce() {
        ChainState pushed = Rig.of(WHOLE_CHAIN).at(420);
        assertThat(pushed.frontPressure()).isCloseTo(3.87725e6, PRINTED);
        assertThat(pushed.rearPressure()).isCloseTo(2.70236e6, PRINTED);
        assertThat(pushed.frontForce() * 0.305 / 2).isCloseTo(1029.69, withinPercentage(5e-4)); // six digits
        assertThat(pushed.rearForce() * 0.305 / 2).isCloseTo(402.576, PRINTED);
        assertThat(pushed.totalForce()).isCloseTo(0.911789 * 1050 * G_OF_ROWS, PRINTED);
        assertThat(pushed.frontForce() / pushed.totalForce()).isCloseTo(0.718923, PRINTED);
    }

    @Test
    void theHardStopOfTheWholeChainTakesThePushBack() {
        HardStop stop =
                WHOLE_CHAIN.with("intent.hard_stop", 0.911789 * G_OF_ROWS).hardStop();
        assertThat(stop.point().pedalForceN()).isCloseTo(420, PRINTED);
        assertThat(stop.frontShare()).isCloseTo(0.718923, PRINTED);
    }

    /** Row B1, VERIFIED: CORD applied academics, brake work example 19; "exact" figures, without its 0.785. */
    @Test
    void footForceBecomesPressureAndPistonForce() {
        WrittenCar car = Cars.TANDEM.with("""
                pedal.ratio: 8
                pedal.efficiency: 1
                apply.bore: 3.0 cm
                front.pistons[0]: 3.2 cm
                front.pad_friction: 0.5
                front.effective_radius: 300 mm
                """);
        ChainState pushed = Rig.of(car).at(360);
        assertThat(pushed.frontPressure()).isCloseTo(4.07437e6, PRINTED);
        // Friction 0.5 on both faces at the tyre's own radius: each wheel brakes with the force of its piston.
        assertThat(pushed.frontForce() / 2).isCloseTo(3276.8, withinPercentage(1e-9));
        assertThat(pushed.frontForce() / 2).isCloseTo(3277.4, withinPercentage(0.05)); // as printed, with 0.785
    }

    /** A bar shares the push that a tandem gets whole: twice the effort for the same masters (closed form). */
    @Test
    void aCentredBarHalvesThePushOfEachMaster() {
        assertThat(Rig.of(Cars.TWIN).at(300).frontPressure())
                .isCloseTo(Rig.of(Cars.TANDEM).at(300).frontPressure() / 2, withinPercentage(1e-12));
    }

    /** Row B2, VERIFIED: A. Esposito, Fluid Power with Applications, example 3-4. Four pad faces share the 20 in2. */
    @Test
    void forceIsGainedWhereTravelIsLost() {
        WrittenCar car = Cars.TANDEM
                .with("apply.bore", Math.sqrt(2 * 4 / Math.PI) * INCH)
                .with("front.pistons[0]", Math.sqrt(5 * 4 / Math.PI) * INCH)
                .with("front.running_clearance", 0.1 * INCH)
                .with("front.pad_friction", 0.5)
                .with("front.effective_radius", 0.3)
                .with("pedal.efficiency", 1)
                .with("pedal.ratio", 1);
        Rig rig = Rig.of(car);
        Pushed pushed = rig.push(100 * POUND_FORCE);
        // Each wheel brakes with the force of one face of 5 in2, a quarter of the load piston.
        assertThat(2 * pushed.state().frontForce()).isCloseTo(1000 * POUND_FORCE, withinPercentage(1e-9));
        assertThat(pushed.frontStroke()).isCloseTo(1 * INCH, withinPercentage(1e-9));
    }

    /** Row B3, VERIFIED: A. Esposito, example 3-5; unrounded values (the book rounds the pressure to 127 psi). */
    @Test
    void aLeverOfArmsGivesItsPressureAndLoad() {
        WrittenCar car = Cars.TANDEM.without("pedal.ratio").with("""
                pedal.linkage.pad_arm: 8 in
                pedal.linkage.pushrod_arm: 2 in
                pedal.linkage.pushrod_angle: 0 deg
                pedal.efficiency: 1
                apply.bore: 1.0 in
                front.pistons[0]: 3.25 in
                front.pad_friction: 0.5
                front.effective_radius: 300 mm
                """);
        ChainState pushed = Rig.of(car).at(25 * POUND_FORCE);
        assertThat(pushed.frontPressure()).isCloseTo(127.324 * PSI, PRINTED);
        assertThat(pushed.frontForce() / 2).isCloseTo(1056.25 * POUND_FORCE, PRINTED);
    }

    /** Row B5, PART VERIFIED, answer recomputed: J. Cutnell, K. Johnson, Physics; one shoe of friction 0.5 in a drum. */
    @Test
    void aDrumTurnsThePistonForceIntoTorque() {
        double cylinder = Math.sqrt(6.4e-4 * 4 / Math.PI);
        WrittenCar car = Cars.TANDEM
                .without("front")
                .with("""
                front.kind: drum
                front.shoes: leading_trailing
                front.brake_factor: 0.50
                front.drum_radius: 0.34 m
                front.threshold_pressure: 0 bar
                pedal.efficiency: 1
                pedal.ratio: 1
                """)
                .with("front.wheel_cylinder", cylinder)
                .with("apply.bore", Math.sqrt(1.8e-4 * 4 / Math.PI));
        assertThat(Rig.of(car).at(47).frontForce() / 2 * 0.3).isCloseTo(28.4089, PRINTED);
        assertThat(Rig.of(car.with("front.drum_radius", 0.28)).at(42).frontForce() / 2 * 0.3)
                .isCloseTo(20.9067, PRINTED);
    }

    /**
     * Row A7, VERIFIED: T. H. Wentzell, Machine Design, example 16.4. Four of its ten brakes on a car of four tenths of its
     * weight; its one rubbed face of 10 in and 0.4 is here two faces of half the force. Its g is 32.2 ft/s2.
     */
    @Test
    void aStopOfAHeavyVehicleTakesItsWheelTorqueAndPadForce() {
        double foot = 12 * INCH;
        double slug = POUND_FORCE / foot;
        double axle = 0.2 * 40_000 / 32.2 * slug;
        WrittenCar car = Cars.TANDEM
                .with("car.load_cases[0].front_axle", axle)
                .with("car.load_cases[0].rear_axle", axle)
                .with("rear.effective_radius: 10 in\nfront.effective_radius: 10 in")
                .with("car.front_tyre_radius: 18 in\ncar.rear_tyre_radius: 18 in")
                .with("intent.hard_stop", 9.68 * foot);
        HardStop stop = car.hardStop();
        double torque = stop.point().frontForceN() / 2 * 18 * INCH;
        assertThat(torque).isCloseTo(21_644.72 * POUND_FORCE * INCH, PRINTED);
        double pistonArea = Math.PI / 4 * 0.05 * 0.05;
        assertThat(2 * stop.point().frontPressurePa() * pistonArea).isCloseTo(5411.18 * POUND_FORCE, PRINTED);
    }

    /** Row B16, CONSTRUCTED, and the same in the units of row A2: 290 psi and 0.3 give 413 psi of 700. */
    @Test
    void aValveBendsTheRearPressureAtItsKnee() {
        Rig rig =
                Rig.of(Cars.TANDEM.with("apply.proportioning_valve.knee: 2 MPa\napply.proportioning_valve.slope: 0.3"));
        double forcePerPressure = Math.PI / 4 * 0.02 * 0.02 / (5 * 0.8);
        assertThat(rig.at(1.9e6 * forcePerPressure).rearPressure()).isCloseTo(1.9e6, within(1e-3));
        assertThat(rig.at(4.83e6 * forcePerPressure).rearPressure()).isCloseTo(2.849e6, within(1e-3));
        assertThat(rig.at(4.83e6 * forcePerPressure).frontPressure()).isCloseTo(4.83e6, within(1e-3));
        double force = rig.curve().pedalForce(ChainState::rearPressure, 3.0e6).orElseThrow();
        assertThat(force / forcePerPressure).isCloseTo(5.33333e6, PRINTED);
        Rig psi = Rig.of(
                Cars.TANDEM.with("apply.proportioning_valve.knee: 290 psi\napply.proportioning_valve.slope: 0.3"));
        assertThat(psi.at(700 * PSI * forcePerPressure).rearPressure()).isCloseTo(413 * PSI, withinPercentage(1e-9));
    }
}
