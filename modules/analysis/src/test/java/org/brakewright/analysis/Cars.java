package org.brakewright.analysis;

/** Invented cars of which every number can be worked out by hand: what is not written here gives, slips and drags nothing. */
public final class Cars {
    private static final String RIGID = """
            format: 1
            name: Plover
            car.wheelbase: 2400 mm
            car.front_tyre_radius: 300 mm
            car.rear_tyre_radius: 300 mm
            car.grip: 0.9
            car.top_speed: 180 km/h
            car.load_cases[0].name: driver
            car.load_cases[0].front_axle: 500 kg
            car.load_cases[0].rear_axle: 500 kg
            car.load_cases[0].cg_height: 480 mm
            front.kind: disc
            front.caliper: fixed
            front.pistons[0]: 50 mm
            front.pad_friction: 0.4
            front.pad_friction_cold: 0.36
            front.pad_friction_hot: 0.3
            front.pad_friction_wet: 0.28
            front.effective_radius: 120 mm
            front.threshold_pressure: 0 bar
            front.running_clearance: 0 mm
            front.caliper_spread: 0 mm/MPa
            front.pad_compression: 0 mm/MPa
            front.knock_back: 0 mm
            front.pad_settling: 0 mm
            rear.kind: disc
            rear.caliper: fixed
            rear.pistons[0]: 50 mm
            rear.pad_friction: 0.4
            rear.pad_friction_cold: 0.36
            rear.pad_friction_hot: 0.3
            rear.pad_friction_wet: 0.28
            rear.effective_radius: 60 mm
            rear.threshold_pressure: 0 bar
            rear.running_clearance: 0 mm
            rear.caliper_spread: 0 mm/MPa
            rear.pad_compression: 0 mm/MPa
            rear.knock_back: 0 mm
            rear.pad_settling: 0 mm
            pedal.ratio: 5
            pedal.free_play: 0 mm
            pedal.travel_to_stop: 150 mm
            pedal.efficiency: 0.8
            pedal.slack: 0 mm
            fluid.bulk_modulus: 2 GPa
            fluid.free_air: 0
            lines.front.tube_length: 0 m
            lines.front.tube_outside_diameter: 4.75 mm
            lines.front.tube_wall: 0.71 mm
            lines.front.tube_modulus: 205 GPa
            lines.front.hose_length: 0 m
            lines.front.hose_expansion: 0 cc/m
            lines.front.trapped_volume: 0 cc
            lines.rear.tube_length: 0 m
            lines.rear.tube_outside_diameter: 4.75 mm
            lines.rear.tube_wall: 0.71 mm
            lines.rear.tube_modulus: 205 GPa
            lines.rear.hose_length: 0 m
            lines.rear.hose_expansion: 0 cc/m
            lines.rear.trapped_volume: 0 cc
            intent.use: road
            intent.hard_stop: 0.9 g
            intent.most_effort: 445 N
            intent.most_travel: 75 mm
            intent.least_reserve: 0.2
            intent.least_stroke_left: 0.15
            intent.balance_margin: 0.05
            intent.panic_push: 1300 N
            intent.air_in_one_circuit: 0.05
            """;

    /** N/m: a mount that moves less than a picometre under any foot. */
    private static final double RIGID_MOUNT = 1e18;

    private static final WrittenCar WITHOUT_APPLY =
            WrittenCar.of(RIGID).with("pedal.mount_stiffness", RIGID_MOUNT).with("pedal.arm_stiffness", RIGID_MOUNT);

    /** Two masters of 20 mm under a centred bar; front share of the brake force 2/3 by the radii 120 and 60 mm. */
    public static final WrittenCar TWIN = WITHOUT_APPLY.with("""
            apply.kind: twin_masters
            apply.front_master.bore: 20 mm
            apply.front_master.stroke: 28 mm
            apply.front_master.lost_stroke: 0 mm
            apply.front_master.spring_force: 0 N
            apply.front_master.spring_rate: 0 N/mm
            apply.front_master.seal_friction: 0 N
            apply.rear_master.bore: 20 mm
            apply.rear_master.stroke: 28 mm
            apply.rear_master.lost_stroke: 0 mm
            apply.rear_master.spring_force: 0 N
            apply.rear_master.spring_rate: 0 N/mm
            apply.rear_master.seal_friction: 0 N
            apply.balance_bar.clevis_spacing: 60 mm
            apply.balance_bar.offset: 0 mm
            apply.balance_bar.movement_per_turn: 1 mm
            apply.balance_bar.offset_limit: 10 mm
            apply.balance_bar.tilt_limit: 0.2 rad
            apply.balance_bar.pin_set_back: 0 mm
            apply.balance_bar.rest_lead: 0 mm
            apply.balance_bar.rod_length: 90 mm
            apply.balance_bar.master_spacing: 60 mm
            """);

    /** A tandem master of 20 mm; the same brakes. */
    public static final WrittenCar TANDEM = WITHOUT_APPLY.with("""
            apply.kind: tandem_master
            apply.bore: 20 mm
            apply.front_fed_by: primary
            apply.primary_stroke: 18 mm
            apply.secondary_stroke: 14 mm
            apply.lost_stroke: 0 mm
            apply.spring_force: 0 N
            apply.spring_rate: 0 N/mm
            apply.seal_friction: 0 N
            """);

    /** What a booster of four times the push adds: no crack-in, and a vacuum that is never used up. */
    public static final String BOOSTER = """
            apply.booster.ratio: 4
            apply.booster.diaphragm_diameter: 400 mm
            apply.booster.vacuum: 0.9 bar
            apply.booster.crack_in_force: 0 N
            apply.booster.efficiency: 1
            """;

    /** In place of a ratio, a hung pedal: pad 300 mm and pin 60 mm below the pivot, a level rod of 120 mm on a level axis. */
    public static final String HUNG_PEDAL = """
            pedal.mechanism.mount: hung
            pedal.mechanism.pad_forward: 0 mm
            pedal.mechanism.pad_up: -300 mm
            pedal.mechanism.pin_forward: 0 mm
            pedal.mechanism.pin_up: -60 mm
            pedal.mechanism.socket_forward: 120 mm
            pedal.mechanism.socket_up: -60 mm
            pedal.mechanism.axis_rise: 0 deg
            """;

    private Cars() {}
}
