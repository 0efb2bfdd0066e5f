package org.brakewright.findings.rules;

import org.brakewright.findings.TestCar;

/** The test car put through a schedule, with light or heavy rotors. */
final class HeatedCars {
    /** One stop from 30 m/s: 1/2 x 800 x 1.04 x 900 = 374 kJ. */
    static final TestCar STOP = schedule(heavy(TestCar.twin()))
            .with("heat.schedules[0].kind", "single_stop")
            .with("heat.schedules[0].from_speed", "30 m/s")
            .with("heat.schedules[0].deceleration", "8 m/s2");

    /** Forty stops from 60 m/s, one each 40 s, on rotors of 3 kg: more than any brake stands. */
    static final TestCar TORTURE = schedule(TestCar.twin())
            .with("heat.front.rotor_mass", "3 kg")
            .with("heat.rear.rotor_mass", "3 kg")
            .with("heat.schedules[0].kind", "snubs")
            .with("heat.schedules[0].from_speed", "60 m/s")
            .with("heat.schedules[0].to_speed", "10 m/s")
            .with("heat.schedules[0].deceleration", "7 m/s2")
            .with("heat.schedules[0].count", "40")
            .with("heat.schedules[0].interval", "40 s");

    private HeatedCars() {}

    private static TestCar heavy(TestCar car) {
        return car.with("heat.front.rotor_mass", "8 kg").with("heat.rear.rotor_mass", "8 kg");
    }

    private static TestCar schedule(TestCar car) {
        return car.with("fluid.grade", "dot_4").with("heat.schedules[0].name", "it");
    }

    /** Friction of an axle the same at every temperature. */
    static TestCar friction(TestCar car, String axle, String friction) {
        return car.with("heat." + axle + ".friction_curve[0].temperature", "20 °C")
                .with("heat." + axle + ".friction_curve[0].friction", friction)
                .with("heat." + axle + ".friction_curve[1].temperature", "900 °C")
                .with("heat." + axle + ".friction_curve[1].friction", friction);
    }
}
