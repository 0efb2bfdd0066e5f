package org.brakewright.findings.rules;

import org.brakewright.findings.TestCar;

/** The invented car with a hung pedal: pad 300 mm and pin 60 mm below the pivot, a level rod of 120 mm on a level axis. */
final class Hung {
    private static final double PAD = 0.300;
    private static final double PIN = 0.060;
    private static final double ROD = 0.120;

    private Hung() {}

    static TestCar pedal() {
        return on(TestCar.twin());
    }

    static TestCar on(TestCar car) {
        return car.without("pedal.ratio")
                .with("pedal.mechanism.mount", "hung")
                .with("pedal.mechanism.pad_forward", "0 mm")
                .with("pedal.mechanism.pad_up", "-300 mm")
                .with("pedal.mechanism.pin_forward", "0 mm")
                .with("pedal.mechanism.pin_up", "-60 mm")
                .with("pedal.mechanism.socket_forward", "120 mm")
                .with("pedal.mechanism.socket_up", "-60 mm")
                .with("pedal.mechanism.axis_rise", "0 deg");
    }

    /** Slider-crank in closed form (engineering mechanics, any textbook): lean of the rod after a pad travel (m). */
    static double lean(double padTravel) {
        return Math.asin(rise(padTravel) / ROD);
    }

    /** The same for the ratio. */
    static double ratio(double padTravel) {
        double turned = padTravel / PAD;
        return PAD / (PIN * Math.cos(turned) - Math.tan(lean(padTravel)) * PIN * Math.sin(turned));
    }

    /** Pad travel (m) at which the rod comes into line with the pivot: the socket then lies 60 + 120 mm from it. */
    static double overCentre() {
        return PAD * (Math.PI / 2 - Math.asin(PIN / (PIN + ROD)));
    }

    private static double rise(double padTravel) {
        return PIN * (1 - Math.cos(padTravel / PAD));
    }
}
