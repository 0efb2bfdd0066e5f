package org.brakewright.analysis.heat;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;

/** The car of {@link Cars} with all that heat sees of it given: 1,000 kg, front share 2/3, friction that heat does not change. */
public final class HotCars {
    private static final String AXLE = """
            heat.AXLE.rotor_mass: 5 kg
            heat.AXLE.outer_diameter: 280 mm
            heat.AXLE.thickness: 10 mm
            heat.AXLE.emissivity: 0.5
            heat.AXLE.airflow: 0.7
            heat.AXLE.rotor_limit: 600 °C
            heat.AXLE.lining_area: 40 cm2
            heat.AXLE.lining_thickness: 10 mm
            heat.AXLE.lining_limit: 450 °C
            heat.AXLE.friction_curve[0].temperature: 100 °C
            heat.AXLE.friction_curve[0].friction: 0.4
            heat.AXLE.friction_curve[1].temperature: 700 °C
            heat.AXLE.friction_curve[1].friction: 0.4
            heat.AXLE.housing_mass: 3 kg
            heat.AXLE.piston_heat_transfer: 150 W/(m2 K)
            """;

    static final WrittenCar CAR = Cars.TWIN
            .with(AXLE.replace("AXLE", "front"))
            .with(AXLE.replace("AXLE", "rear").replace("280 mm", "170 mm"))
            .with("""
                    heat.ambient: 20 °C
                    heat.rotating_share: 0.05
                    heat.onward_speed: 60 km/h
                    """);

    public static final WrittenCar STOP = CAR.with("""
            heat.schedules[0].kind: single_stop
            heat.schedules[0].name: one stop
            heat.schedules[0].from_speed: 30 m/s
            heat.schedules[0].deceleration: 8 m/s2
            """);

    public static final WrittenCar RULE = CAR.with("""
            heat.schedules[0].kind: rule_snubs
            heat.schedules[0].name: fade
            heat.schedules[0].rule: un_r13h
            """);

    static final WrittenCar SNUBS = CAR.with("""
            heat.schedules[0].kind: snubs
            heat.schedules[0].name: three
            heat.schedules[0].from_speed: 30 m/s
            heat.schedules[0].to_speed: 10 m/s
            heat.schedules[0].deceleration: 5 m/s2
            heat.schedules[0].count: 3
            heat.schedules[0].interval: 24 s
            """);

    public static final WrittenCar HILL = CAR.with("""
            heat.schedules[0].kind: descent
            heat.schedules[0].name: pass
            heat.schedules[0].length: 6 km
            heat.schedules[0].grade: 8 %
            heat.schedules[0].speed: 15 m/s
            """);

    private HotCars() {}
}
