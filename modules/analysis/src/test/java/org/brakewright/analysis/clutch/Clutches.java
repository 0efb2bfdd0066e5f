package org.brakewright.analysis.clutch;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;

/** Invented clutches on a car of which all else is known. */
public final class Clutches {
    /** Row E6 of the check values: no part of it gives, slips or drags that the row does not name. */
    public static final WrittenCar FORK = Cars.TANDEM.with("""
            fluid.bulk_modulus: 1 GPa
            clutch.pedal.ratio: 5.5
            clutch.pedal.free_play: 6 mm
            clutch.pedal.travel_to_stop: 140 mm
            clutch.pedal.efficiency: 0.95
            clutch.pedal.mount_stiffness: 100000 N/mm
            clutch.pedal.arm_stiffness: 100000 N/mm
            clutch.pedal.slack: 0 mm
            clutch.master.bore: 19.05 mm
            clutch.master.stroke: 36 mm
            clutch.master.lost_stroke: 0 mm
            clutch.master.spring_force: 0 N
            clutch.master.spring_rate: 0 N/mm
            clutch.master.seal_friction: 0 N
            clutch.line.tube_length: 0 m
            clutch.line.tube_outside_diameter: 4.75 mm
            clutch.line.tube_wall: 0.71 mm
            clutch.line.tube_modulus: 205 GPa
            clutch.line.hose_length: 0 m
            clutch.line.hose_expansion: 0 cc/m
            clutch.line.trapped_volume: 0 cc
            clutch.slave.kind: fork_slave
            clutch.slave.bore: 22.23 mm
            clutch.slave.stroke: 34 mm
            clutch.slave.fork_ratio: 2.0
            clutch.slave.fork_stiffness: 100000 N/mm
            clutch.release_efficiency: 0.93
            clutch.bearing.kind: constant_contact
            clutch.bearing.preload: 11 mm
            clutch.cover.release_load: 1500 N
            clutch.cover.finger_ratio: 4
            clutch.cover.release_travel: 8 mm
            clutch.cover.most_bearing_travel: 11 mm
            clutch.plate.outer_diameter: 200 mm
            clutch.plate.inner_diameter: 100 mm
            clutch.plate.friction: 0.2
            clutch.plate.faces: 2
            clutch.plate.wear: 1 mm
            clutch.plate.clearance: 0.5 mm
            clutch.engine_torque: 300 N m
            clutch.torque_reserve: 1.3
            clutch.most_effort: 130 N
            """);

    /** The same before a ring of 2.0 and 1.375 in (scenario D9 of the needs). */
    public static final WrittenCar RING = FORK.without("clutch.slave").with("""
            clutch.slave.kind: concentric
            clutch.slave.outer_diameter: 2.0 in
            clutch.slave.inner_diameter: 1.375 in
            clutch.slave.stroke: 1 in
            clutch.bearing.preload: 15.4 mm
            """);

    /** The same cover with its spring measured: the spring of the pages in docs/laws. */
    public static final WrittenCar SPRUNG = RING.without("clutch.cover").with("""
            clutch.cover.most_bearing_travel: 11 mm
            clutch.cover.diaphragm.kind: spring_dimensions
            clutch.cover.diaphragm.outer_diameter: 220 mm
            clutch.cover.diaphragm.rim_inner_diameter: 172 mm
            clutch.cover.diaphragm.thickness: 2.5 mm
            clutch.cover.diaphragm.cone_height: 4.2 mm
            clutch.cover.diaphragm.press_diameter: 216 mm
            clutch.cover.diaphragm.fulcrum_diameter: 177 mm
            clutch.cover.diaphragm.bearing_diameter: 48 mm
            clutch.cover.diaphragm.engaged_deflection: 3.2 mm
            clutch.cover.diaphragm.modulus: 206 GPa
            clutch.cover.diaphragm.finger_stiffness: 2000 N/mm
            clutch.plate.cushion_travel: 0.8 mm
            """);

    private Clutches() {}
}
