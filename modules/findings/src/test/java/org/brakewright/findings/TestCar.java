package org.brakewright.findings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.model.Build;

/**
 * An invented car whose numbers can be worked out by hand: without spring and threshold pressures the front share of the
 * brake force is fixed. One part at a time is changed by its key path.
 *
 * <p>800 kg, half on each axle, center of gravity at 0.2 of the wheelbase. Equal masters and a centred bar; front
 * pistons of twice the area and pads of 0.42 against 0.36 give the front 0.84 to 0.36, so 70 % of the brake force. The
 * rear then locks first from (0.5 - 0.3)/0.2 = 1.0 g on (closed form, Limpert and Day, see the page on fixed splits).
 */
public final class TestCar {
    /** Share of the front in the brake force. */
    public static final double FRONT_SHARE = 0.7;

    /** Deceleration in g from which the rear locks first. */
    public static final double CRITICAL = 1.0;

    private static final String BASIC = """
            format: 1
            name: Lapwing
            car.wheelbase: 2400 mm
            car.front_tyre_radius: 300 mm
            car.rear_tyre_radius: 300 mm
            car.grip: 0.9
            car.top_speed: 180 km/h
            car.load_cases[0].name: driver
            car.load_cases[0].front_axle: 400 kg
            car.load_cases[0].rear_axle: 400 kg
            car.load_cases[0].cg_height: 480 mm
            front.kind: disc
            front.caliper: fixed
            front.pistons[0]: 36 mm
            front.pistons[1]: 36 mm
            front.pad_friction: 0.42
            front.effective_radius: 110 mm
            front.threshold_pressure: 0 bar
            front.pad_settling: 0 mm
            front.rated_pressure: 200 bar
            rear.kind: disc
            rear.caliper: fixed
            rear.pistons[0]: 36 mm
            rear.pad_friction: 0.36
            rear.effective_radius: 110 mm
            rear.threshold_pressure: 0 bar
            rear.pad_settling: 0 mm
            rear.rated_pressure: 200 bar
            pedal.ratio: 5.5
            pedal.free_play: 3 mm
            pedal.travel_to_stop: 150 mm
            pedal.efficiency: 0.85
            pedal.slack: 0 mm
            pedal.arm_stiffness: 1000000 N/mm
            pedal.mount_stiffness: 200 N/mm
            intent.use: road
            intent.hard_stop: 0.9 g
            intent.most_effort: 445 N
            intent.most_travel: 75 mm
            intent.least_reserve: 0.20
            intent.least_stroke_left: 0.15
            intent.balance_margin: 0.05
            intent.panic_push: 1335 N
            intent.air_in_one_circuit: 0.05
            """;

    private static final String TWIN = """
            apply.kind: twin_masters
            apply.front_master.bore: 0.70 in
            apply.front_master.stroke: 28 mm
            apply.front_master.spring_force: 0 N
            apply.front_master.spring_rate: 0 N/mm
            apply.front_master.seal_friction: 0 N
            apply.rear_master.bore: 0.70 in
            apply.rear_master.stroke: 28 mm
            apply.rear_master.spring_force: 0 N
            apply.rear_master.spring_rate: 0 N/mm
            apply.rear_master.seal_friction: 0 N
            apply.balance_bar.clevis_spacing: 64 mm
            apply.balance_bar.offset: 0 mm
            apply.balance_bar.movement_per_turn: 1 mm
            apply.balance_bar.offset_limit: 10 mm
            apply.balance_bar.tilt_limit: 25 deg
            apply.balance_bar.side_float: 1 mm
            apply.balance_bar.pin_set_back: 0 mm
            apply.balance_bar.rest_lead: 0 mm
            apply.balance_bar.rod_length: 90 mm
            apply.balance_bar.master_spacing: 64 mm
            """;

    private static final String TANDEM = """
            apply.kind: tandem_master
            apply.bore: 7/8 in
            apply.front_fed_by: primary
            apply.primary_stroke: 20 mm
            apply.secondary_stroke: 18 mm
            apply.spring_force: 0 N
            apply.spring_rate: 0 N/mm
            apply.seal_friction: 0 N
            apply.rated_pressure: 200 bar
            """;

    private static final String CLUTCH = """
            clutch.pedal.ratio: 5.5
            clutch.pedal.free_play: 6 mm
            clutch.pedal.travel_to_stop: 145 mm
            clutch.pedal.efficiency: 0.95
            clutch.pedal.mount_stiffness: 100000 N/mm
            clutch.pedal.arm_stiffness: 100000 N/mm
            clutch.pedal.slack: 0 mm
            clutch.master.bore: 19.05 mm
            clutch.master.stroke: 36 mm
            clutch.master.lost_stroke: 0 mm
            clutch.master.spring_force: 0 N
            clutch.master.spring_rate: 0 N/mm
            clutch.line.tube_length: 0 m
            clutch.line.hose_length: 0 m
            clutch.line.trapped_volume: 0 cc
            clutch.slave.kind: fork_slave
            clutch.slave.bore: 22.23 mm
            clutch.slave.stroke: 34 mm
            clutch.slave.fork_ratio: 2
            clutch.slave.fork_stiffness: 100000 N/mm
            clutch.release_efficiency: 0.93
            clutch.bearing.kind: constant_contact
            clutch.bearing.preload: 12 mm
            clutch.cover.release_load: 1500 N
            clutch.cover.finger_ratio: 4
            clutch.cover.release_travel: 8 mm
            clutch.cover.most_bearing_travel: 11 mm
            clutch.plate.outer_diameter: 200 mm
            clutch.plate.inner_diameter: 100 mm
            clutch.plate.friction: 0.2
            clutch.plate.wear: 1 mm
            clutch.plate.clearance: 0.5 mm
            clutch.engine_torque: 130 N m
            clutch.torque_reserve: 1.3
            clutch.most_effort: 130 N
            """;

    private final Map<String, String> texts;

    private TestCar(Map<String, String> texts) {
        this.texts = texts;
    }

    /** Twin masters and a balance bar. */
    public static TestCar twin() {
        return new TestCar(texts(BASIC + TWIN));
    }

    /** A tandem master without booster, 7/8 in. */
    public static TestCar tandem() {
        return new TestCar(texts(BASIC + TANDEM));
    }

    /** Ten tonnes on pads of wood: no push brings its hard stop. */
    public static TestCar hopeless() {
        return twin().with("car.load_cases[0].front_axle", "5000 kg")
                .with("car.load_cases[0].rear_axle", "5000 kg")
                .with("front.pad_friction", "0.05")
                .with("rear.pad_friction", "0.05");
    }

    /** The tandem master with a booster of ratio 3. */
    public static TestCar boosted() {
        return tandem().with("apply.booster.ratio", "3")
                .with("apply.booster.diaphragm_diameter", "9 in")
                .with("apply.booster.vacuum", "20 inHg")
                .with("apply.booster.crack_in_force", "0 N");
    }

    private static Map<String, String> texts(String lines) {
        Map<String, String> texts = new LinkedHashMap<>();
        lines.lines().forEach(line -> texts.put(line.split(": ", 2)[0], line.split(": ", 2)[1]));
        return texts;
    }

    /** The same car with one value written otherwise. */
    public TestCar with(String path, String text) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.put(path, text);
        return new TestCar(changed);
    }

    /** The same car without a key and what stands below it. */
    public TestCar without(String path) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.keySet().removeIf(key -> key.equals(path) || key.startsWith(path + ".") || key.startsWith(path + "["));
        return new TestCar(changed);
    }

    /** The same car that answers to rule sets. */
    public TestCar answeringTo(String... ruleSets) {
        TestCar car = this;
        for (int i = 0; i < ruleSets.length; i++) {
            car = car.with("intent.rule_sets[" + i + "]", ruleSets[i]);
        }
        return car;
    }

    /** The same car with a second load case: axle loads in kg, height in mm. */
    public TestCar alsoLoaded(String name, int front, int rear, int height) {
        return with("car.load_cases[1].name", name)
                .with("car.load_cases[1].front_axle", front + " kg")
                .with("car.load_cases[1].rear_axle", rear + " kg")
                .with("car.load_cases[1].cg_height", height + " mm");
    }

    /** The same car with a proportioning valve in the rear line. */
    public TestCar withValve(String knee, String slope, boolean adjustable) {
        return with("apply.proportioning_valve.knee", knee)
                .with("apply.proportioning_valve.slope", slope)
                .with("apply.proportioning_valve.adjustable", adjustable ? "yes" : "no");
    }

    /** The same car with drums behind: leading and trailing shoes that give as much as the discs per wheel cylinder. */
    public TestCar withRearDrums(String bore) {
        return without("rear")
                .with("rear.kind", "drum")
                .with("rear.shoes", "leading_trailing")
                .with("rear.brake_factor", "2.3")
                .with("rear.drum_radius", "115 mm")
                .with("rear.wheel_cylinder", bore)
                .with("rear.threshold_pressure", "0 bar");
    }

    /**
     * The same car with a hand lever on the rear pads: 300 N x 8 x 0.75 / 2 x 20 press each pad with 18 kN, and at a friction
     * of 0.3 on 110 mm each wheel holds 1188 N m.
     */
    public TestCar withParkingBrake() {
        return with("parking.control", "hand")
                .with("parking.driver_force", "300 N")
                .with("parking.lever_ratio", "8")
                .with("parking.cable_efficiency", "0.75")
                .with("parking.axle", "rear")
                .with("parking.acts_on.kind", "caliper_lever")
                .with("parking.acts_on.pad_force_ratio", "20")
                .with("parking.acts_on.pad_friction", "0.3");
    }

    /** The same car with drums behind of which the shoes are known: row C1 of the check values, as leading and trailing. */
    public TestCar withRearShoes(String arrangement, String friction) {
        return withRearDrums("1 in")
                .without("rear.brake_factor")
                .with("rear.shoes", arrangement)
                .with("rear.drum_radius", "150 mm")
                .with("rear.lining_friction", friction)
                .with("rear.shoe_geometry.pivot_distance", "125 mm")
                .with("rear.shoe_geometry.actuation_arm", "216.506 mm")
                .with("rear.shoe_geometry.lining_start", "0 deg")
                .with("rear.shoe_geometry.lining_end", "120 deg");
    }

    /**
     * The same car with a rigid clutch: row E6 of the check values but a pedal of 145 mm, so 14.979 mm of pad beyond the 6 mm
     * of free play move the bearing 1 mm. 1500 N free it at 8 mm; its fingers say 6000 N of clamp.
     */
    public TestCar withClutch() {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.putAll(texts(CLUTCH));
        return new TestCar(changed);
    }

    /** As written. */
    public Build build() {
        return Written.build(texts);
    }

    /** Computed. */
    public Facts facts() {
        return facts(Map.of());
    }

    /** Computed with some SI values replaced. */
    public Facts facts(Map<String, Double> overrides) {
        return switch (Resolve.resolve(build(), overrides)) {
            case Resolution.Resolved resolved -> new Facts(resolved.build(), Analyse.analyse(resolved.build()));
            case Resolution.Unusable unusable -> throw new IllegalStateException("unusable: " + unusable.problems());
        };
    }

    /** What a rule says about this car. */
    public List<Finding> judgedBy(Rule rule) {
        return rule.judge(facts());
    }
}
