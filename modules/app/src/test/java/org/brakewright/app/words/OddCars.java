package org.brakewright.app.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.stop.Stops;
import org.brakewright.app.Cars;
import org.brakewright.buildfile.BuildFile;
import org.brakewright.buildfile.EditOutcome;
import org.brakewright.buildfile.ReadOutcome;
import org.brakewright.buildfile.SpanEdit;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Rules;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * The example cars, each with one thing or a few changed so that every rule says everything it can say. The changes are
 * chosen for what is said, not as good engineering.
 */
final class OddCars {
    private static final String COLD_PADS = "front.pad_friction_cold=";

    private static final List<String> EVERY_CAR = List.of(
            "",
            "car.grip=0.05",
            "car.grip=0.3",
            "car.grip=0.6",
            "car.grip=1.6",
            "intent.hard_stop=0.3 g",
            "intent.hard_stop=1.4 g",
            "intent.rule_sets=[student_competition]",
            "intent.rule_sets=[un_r13h, fmvss_135, state_assessment, student_competition]",
            "intent.rule_sets=[un_r13h, fmvss_135, state_assessment] & car.grip=0.4",
            "intent.rule_sets=[state_assessment]",
            "intent.use=track",
            "intent.most_travel=20 mm",
            "front.pad_friction=0.1 & intent.rule_sets=[student_competition, un_r13h]",
            "front.pad_friction=0.6",
            "front.pad_friction=0.2",
            "pedal.travel_to_stop=30 mm",
            "pedal.travel_to_stop=60 mm",
            "pedal.travel_to_stop=75 mm & intent.rule_sets=[]",
            "pedal.travel_to_stop=90 mm",
            "pedal.travel_to_stop=110 mm & intent.rule_sets=[state_assessment]",
            "pedal.free_play=0 mm",
            "car.load_cases[1].cg_height=1200 mm",
            "front.rated_pressure=20 bar & rear.rated_pressure=20 bar",
            "front.rated_pressure=400 bar & rear.rated_pressure=400 bar",
            "front.rated_pressure= & rear.rated_pressure=",
            "intent.air_in_one_circuit=0.4",
            "intent.air_in_one_circuit=0.4 & intent.rule_sets=[state_assessment]",
            "intent.air_in_one_circuit=0.02 & intent.rule_sets=[state_assessment]",
            "intent.air_in_one_circuit=0.4 & pedal.travel_to_stop=300 mm & intent.rule_sets=[]",
            "checks.no_leak=no & checks.pushrods_retained=no & checks.brake_lights=yes");

    private static final List<String> TWIN = List.of(
            "apply.balance_bar.offset=12 mm",
            "apply.balance_bar.offset=-12 mm",
            "apply.balance_bar.offset=5 mm",
            "pedal.pushrod.clevis_thread=10 mm",
            "pedal.pushrod.clevis_thread=6 mm",
            "apply.balance_bar.rod_length=30 mm & pedal.pushrod.clevis_length=28 mm",
            "apply.balance_bar.offset=8 mm & intent.rule_sets=[un_r13h]",
            "apply.balance_bar.locked_for_road=yes",
            "apply.balance_bar.locked_for_road=",
            "apply.balance_bar.tilt_limit=1 deg",
            "apply.balance_bar.tilt_limit=45 deg",
            "apply.balance_bar.tilt_limit=45 deg & intent.rule_sets=[state_assessment]",
            "apply.balance_bar.tilt_limit=1 deg & intent.rule_sets=[state_assessment] & car.grip=0.2",
            "apply.balance_bar.tilt_limit=2 deg & apply.front_master.bore=1 in",
            "apply.balance_bar.tilt_limit=8 deg & apply.front_master.bore=1 in",
            "apply.balance_bar.tilt_limit=2 deg & apply.rear_master.bore=1 in",
            "apply.balance_bar.tilt_limit=4 deg & apply.rear_master.bore=1 in",
            "apply.balance_bar.tilt_limit=8 deg & apply.rear_master.bore=1 in",
            "apply.front_master.stroke=9 mm & apply.rear_master.stroke=9 mm",
            "apply.front_master.stroke=10.5 mm & apply.rear_master.stroke=10.5 mm",
            "front.pad_friction=0.3 & intent.hard_stop=0.6 g",
            "front.threshold_pressure=6 bar",
            "front.threshold_pressure=6 bar & apply.balance_bar.offset=8 mm",
            COLD_PADS + "0.05 & rear.pad_friction_cold=0.60",
            COLD_PADS
                    + "0.40 & rear.pad_friction_cold=0.40 & front.threshold_pressure=6 bar & apply.balance_bar.offset=6 mm",
            "intent.rule_sets=[] & apply.balance_bar.offset=10 mm & car.grip=0.3",
            "intent.rule_sets=[] & front.pad_friction=0.6 & rear.pad_friction=0.1 & car.grip=0.3",
            "apply.front_master.bore=2 in & apply.rear_master.bore=2 in & pedal.linkage.pad_arm=60 mm"
                    + " & front.pad_friction=0.1 & rear.pad_friction=0.1"
                    + " & intent.rule_sets=[student_competition, un_r13h]",
            "apply.front_master.bore=0.5 in & apply.rear_master.bore=2 in & rear.pad_friction=0.1"
                    + " & rear.threshold_pressure=5 bar");

    private static final List<String> TANDEM = List.of(
            "apply.primary_stroke=8 mm & apply.secondary_stroke=8 mm",
            "apply.primary_stroke=9.5 mm & apply.secondary_stroke=9.5 mm",
            "apply.bore=2 in",
            "apply.bore=1/2 in",
            "apply.proportioning_valve.adjustable=no",
            "apply.split=diagonal");

    /** Drums that lose less, hot and wet, than their shoes would have it. */
    private static final String KNOWN_FACTORS =
            "rear.brake_factor_cold=3.76 & rear.brake_factor_hot=2.51 & rear.brake_factor_wet=2.51";

    private static final List<String> BOOSTED = List.of(
            "apply.booster.vacuum=1 inHg",
            "apply.booster.vacuum=22 inHg & pedal.ratio=7",
            "intent.rule_sets=[state_assessment] & pedal.ratio=9",
            "intent.rule_sets=[state_assessment] & pedal.ratio=2",
            "intent.rule_sets=[fmvss_135] & pedal.ratio=2",
            "apply.proportioning_valve.knee=5 bar",
            "apply.proportioning_valve.knee=25 bar",
            KNOWN_FACTORS,
            KNOWN_FACTORS + " & apply.proportioning_valve.knee=22 bar",
            KNOWN_FACTORS + " & apply.proportioning_valve.knee=25 bar",
            "rear.lining_friction_cold=0.31 & rear.lining_friction_hot=0.29 & rear.lining_friction_wet=0.29 & apply.proportioning_valve.knee=12 bar");

    private static final String PINNED_SHOES = "rear.shoes=leading_trailing & rear.shoe_geometry.anchor_distance=";

    private static final String FACTOR_ALONE =
            "rear.shoe_geometry.pivot_distance= & rear.shoe_geometry.actuation_arm= & rear.shoe_geometry.anchor_distance="
                    + " & rear.shoe_geometry.lining_start= & rear.shoe_geometry.lining_end="
                    + " & rear.shoe_geometry.other_lining_start= & rear.shoe_geometry.other_lining_end="
                    + " & rear.shoe_geometry.lining_width=";

    private static final List<String> DRUMS = List.of(
            PINNED_SHOES,
            PINNED_SHOES + " & rear.lining_friction=0.6",
            "rear.lining_friction=0.5",
            "rear.lining_friction=0.8",
            FACTOR_ALONE,
            FACTOR_ALONE + " & apply.proportioning_valve.knee=25 bar",
            FACTOR_ALONE + " & apply.proportioning_valve.knee=22 bar",
            FACTOR_ALONE + " & car.grip=0.6");

    private static final String TURNING_BAR = "apply.balance_bar.pin_set_back=3 mm"
            + " & apply.metering_valve.opening=3 bar & apply.metering_valve.blend=30 bar";

    private static final List<String> PARKED = List.of(
            "parking.driver_force=230 N", "parking.driver_force=100 N", "parking.lever_ratio=2", "car.grip=0.35");

    private static final String SECOND_VALVE =
            "apply.second_proportioning_valve.knee=20 bar & apply.second_proportioning_valve.slope=0.5";

    private static final String METERED = "apply.metering_valve.opening=5 bar & apply.metering_valve.blend=20 bar";

    private static final List<String> PLUMBED = List.of(
            SECOND_VALVE,
            METERED,
            "apply.proportioning_valve.line=front",
            "rear.cup_expanders=no",
            "rear.cup_expanders=yes",
            "lines.rear.residual_valve=10 psi & rear.threshold_pressure=4 bar");

    private static final List<String> PLUMBED_DISCS = List.of(
            METERED,
            SECOND_VALVE + " & apply.proportioning_valve.knee=20 bar & apply.proportioning_valve.slope=0.4"
                    + " & apply.front_master.bore=2 in & apply.rear_master.bore=2 in & pedal.linkage.pad_arm=60 mm"
                    + " & front.pad_friction=0.1 & rear.pad_friction=0.1",
            "lines.front.residual_valve=10 psi",
            "lines.front.residual_valve=2 psi & front.threshold_pressure=0.5 bar",
            "lines.front.level_above_brakes=-200 mm",
            "lines.front.level_above_brakes=200 mm",
            "front.pad_wear=8 mm",
            "lines.front.reservoir_volume=90 cc",
            "front.pad_wear=8 mm & lines.front.reservoir_volume=10 cc & intent.rule_sets=[]",
            "front.pad_wear=8 mm & lines.front.reservoir_volume=900 cc & intent.rule_sets=[]",
            "front.pad_wear=8 mm & lines.front.reservoir_volume=10 cc & intent.rule_sets=[fmvss_135]",
            "front.pad_wear=8 mm & lines.front.reservoir_volume=900 cc & intent.rule_sets=[fmvss_135]",
            "front.pad_wear=0 mm & front.running_clearance=0 mm & lines.front.reservoir_volume=3 cc");

    private static final List<String> BARS = List.of(
            "apply.balance_bar.side_float=",
            "apply.balance_bar.side_float=0 mm",
            "apply.balance_bar.side_float=3 mm",
            "apply.balance_bar.pin_set_back=12 mm",
            "apply.balance_bar.master_spacing=66 mm",
            "apply.balance_bar.master_spacing=84 mm");

    private static final String SOFT_CALIPERS =
            " & front.caliper_spread=0.5 mm/MPa & rear.caliper_spread=0.5 mm/MPa & pedal.travel_to_stop=400 mm";

    private static final List<String> MECHANISMS = List.of(
            "pedal.travel_to_stop=320 mm",
            "pedal.mechanism.pin_forward=10 mm & pedal.travel_to_stop=195 mm",
            "pedal.mechanism.pin_forward=20 mm & pedal.travel_to_stop=400 mm",
            "pedal.mechanism.socket_up=-70 mm",
            "intent.panic_push=2500 N" + SOFT_CALIPERS,
            "intent.panic_push=200 N" + SOFT_CALIPERS);

    private static final String HOT = "front.pad_friction_hot=0.3 & rear.pad_friction_hot=0.3 & ";

    private static final List<String> HOT_DISCS = List.of(
            HOT + "intent.rule_sets=[un_r13h]",
            HOT + "intent.rule_sets=[un_r13h] & pedal.linkage.pad_arm=90 mm",
            HOT + "intent.rule_sets=[]",
            "intent.rule_sets=[un_r13h] & pedal.linkage.pad_arm=90 mm",
            HOT + "intent.rule_sets=[un_r13h] & front.pad_friction=0.6 & rear.pad_friction=0.6",
            "rear.pad_friction_hot=0.2 & intent.rule_sets=[un_r13h] & front.pad_friction=0.6 & rear.pad_friction=0.6",
            HOT + "intent.rule_sets=[un_r13h] & intent.hard_stop=1.5 g");

    private static final String GAP = "clutch.bearing.preload= & clutch.bearing.kind=clearance & clutch.bearing.gap=";

    private static final String NO_ROOM = "clutch.bearing.preload=8 mm & clutch.cover.release_travel=10.9 mm";

    private static final List<String> CLUTCHED = List.of(
            "clutch.master.bore=5/8 in",
            "clutch.master.bore=3/4 in & clutch.master.stroke=15 mm",
            "clutch.pedal.travel_to_stop=105 mm",
            "clutch.pedal.travel_to_stop=110 mm",
            "clutch.pedal.travel_to_stop=115 mm",
            NO_ROOM,
            NO_ROOM + " & clutch.pedal.travel_to_stop=60 mm",
            NO_ROOM + " & clutch.pedal.travel_to_stop=90 mm",
            NO_ROOM + " & clutch.pedal.travel_to_stop=95 mm",
            NO_ROOM + " & clutch.pedal.travel_to_stop=100 mm",
            "clutch.bearing.preload=11 mm",
            "clutch.bearing.preload=12.3 mm",
            "clutch.bearing.preload=12.7 mm",
            "clutch.bearing.preload=22 mm",
            GAP + "3 mm",
            GAP + "6 mm",
            "clutch.engine_torque=250 N m",
            "clutch.engine_torque=170 N m",
            "clutch.engine_torque=");

    private static final List<String> FORKED = List.of(
            "clutch.cover.diaphragm.points[2].travel=9.5 mm & clutch.most_effort=400 N",
            "clutch.pedal_spring.spring_rate=100 N/mm",
            "clutch.most_effort=400 N",
            "clutch.cover.clamp_load=5000 N");

    private static final String EVEN_PADS =
            "heat.front.friction_curve[2].friction=0.40 & heat.rear.friction_curve[2].friction=0.40";

    private static final String STEADY_BALANCE = "apply.balance_bar.offset=8 mm & " + EVEN_PADS;

    private static final List<String> HEATED = List.of(
            EVEN_PADS,
            STEADY_BALANCE,
            pads("0.34"),
            pads("0.20"),
            pads("0.10"),
            STEADY_BALANCE + " & heat.front.rotor_mass=12 kg & heat.rear.rotor_mass=12 kg & heat.front.vent_gap=4 mm"
                    + " & heat.front.lining_limit=900 °C & heat.rear.lining_limit=900 °C",
            "heat.front.rotor_mass=1 kg & heat.rear.rotor_mass=1 kg",
            "apply.balance_bar.offset=6.4 mm & heat.front.friction_curve[1].friction=0.2",
            "heat.front.rotor_limit=200 °C & heat.front.lining_limit=200 °C",
            "fluid.dry_boiling_point=130 °C & fluid.wet_boiling_point=120 °C & heat.front.rotor_mass=0.4 kg"
                    + " & heat.front.airflow=0.1 & heat.front.piston_heat_transfer=1500 W/(m2 K)",
            "fluid.grade=",
            "fluid.grade=dot_5_1 & heat.front.piston_heat_transfer=20 W/(m2 K) & heat.rear.piston_heat_transfer=20 W/(m2 K)",
            "fluid.dry_boiling_point=300 °C & fluid.wet_boiling_point=280 °C & heat.front.piston_heat_transfer=20 W/(m2 K)"
                    + " & heat.rear.piston_heat_transfer=20 W/(m2 K)",
            "heat.onward_speed=4 km/h & heat.front.airflow=0.1 & heat.front.rotor_mass=20 kg");

    private static final List<String> STOPPING = List.of(
            "stops.speed=350 km/h & front.pad_friction=0.05 & rear.pad_friction=0.05",
            "stops.rise=0.05 s & apply.balance_bar.offset=3 mm",
            "stops.peak_slip=0.3 & apply.balance_bar.offset=5 mm");

    private static final String END = "plumbing.tubes[0].end.";

    private static final List<String> ROUTED = List.of(
            END + "form=single_37",
            END + "form=convex",
            END + "form=iso_double",
            END + "form=banjo",
            END + "form=single_45",
            END + "form=compression & " + END + "seat=ferrule",
            END + "port_thread=m10x1",
            END + "port_thread=m14x1_5",
            "plumbing.tubes[0].outside_diameter=6 mm & " + END + "nut=unf_7_16_24 & " + END + "port_thread=unf_7_16_24",
            "plumbing.hoses[0].end.form=female",
            "plumbing.tubes[0].wall=0.89 mm",
            "intent.panic_push=2500 N",
            "intent.panic_push=2500 N & plumbing.tubes[0].wall=0.3 mm",
            "plumbing.bender.first_grip=190 mm",
            "plumbing.nut_straight=140 mm",
            "plumbing.obstacles[2].from.left=490 mm",
            "plumbing.obstacles[1].radius=320 mm",
            "plumbing.obstacles[0].radius=140 mm",
            "plumbing.tubes[0].points[1].up=600 mm & plumbing.tubes[0].clips=[150 mm]",
            "plumbing.parts[10].bleeder=no",
            "plumbing.tubes[0].clips=",
            "plumbing.tubes[3].clips=[250 mm, 500 mm, 800 mm, 1000 mm, 1300 mm, 1600 mm, 1900 mm, 2150 mm, 2400 mm]");

    private static final String PRESSED =
            "mount.stringers[1].body.forward=300 mm & mount.stringers[1].body.up=74 mm & mount.stringers[1].profile.wall=1 mm";

    private static final List<String> MOUNTED = List.of(
            "mount.stringers[1].body.forward=-174 mm & mount.stringers[1].body.left=-131 mm",
            "mount.loads.stiffness=500 N",
            "mount.loads.strength=5000 N",
            "mount.loads.strength=10000 N & mount.loads.sideways=0.5 & mount.brackets[0].bolts.grade=class_4_6",
            "mount.loads.strength=10000 N & mount.loads.sideways=0.5",
            "mount.brackets[0].bolts.grade=class_5_8",
            "mount.brackets[0].bolts.engagement=4 mm",
            "mount.brackets[0].bolts.torque=2 N m",
            "mount.brackets[0].bolts.root_to_bolt= & mount.brackets[0].bolts.bolt_to_edge=",
            "mount.measured.force=300 N & mount.measured.pad=0.15 mm",
            "mount.measured.force=300 N & mount.measured.pad=2 mm",
            PRESSED,
            PRESSED + " & mount.stringers[1].profile.diameter=10 mm",
            PRESSED + " & mount.stringers[1].profile.diameter=8 mm",
            "mount.loads.stops=100000000 & mount.loads.stop_force=600 N",
            "mount.loads.stops=100000000 & mount.loads.stop_force=2000 N");

    private static final String WELD =
            "welds: [{from: {across: -90 mm, up: -10 mm}, to: {across: -90 mm, up: 10 mm}, leg: 1 mm}]";

    private static final List<String> WELDED = List.of(
            "", "mount.loads.stiffness=10000 N", "mount.loads.stiffness=10000 N & mount.loads.function=10000 N");

    private static final String LOW_SHAFT = "footwell.obstacles[1].from.up=300 mm & footwell.obstacles[1].to.up=300 mm"
            + " & footwell.throttle.pad.left=190 mm & footwell.throttle.pivot.left=190 mm & footwell.obstacles[1].";

    private static String shaft(int left) {
        return LOW_SHAFT + "from.left=" + left + " mm & footwell.obstacles[1].to.left=" + left + " mm";
    }

    private static final List<String> FOOTED = List.of(
            "footwell.throttle.pad.left=205 mm & footwell.throttle.pivot.left=205 mm & footwell.shoe=bare & footwell.driver=women_5",
            "footwell.throttle.pad.left=205 mm & footwell.driver=men_5",
            "footwell.throttle.pad.left=150 mm",
            "footwell.throttle.pad.forward=-135 mm",
            "footwell.throttle.pad.forward=-80 mm",
            "footwell.throttle.pad.left=240 mm & footwell.shoe=boots",
            shaft(345),
            shaft(275),
            shaft(362),
            shaft(258),
            "footwell.obstacles[0].to.up=250 mm",
            "footwell.obstacles[0].to.up=260 mm");

    private static final List<Facts> FACTS = Stream.of(
                    changed("hill-climber", EVERY_CAR),
                    changed("hill-climber", TWIN),
                    changed("shop-pickup", EVERY_CAR),
                    changed("shop-pickup", TANDEM),
                    changed("shop-pickup", BOOSTED),
                    changed("shop-pickup", DRUMS),
                    changed("hill-climber", PARKED),
                    changed("hill-climber", HEATED),
                    changed("hill-climber", STOPPING),
                    changed("shop-pickup", PLUMBED),
                    changed("hill-climber", PLUMBED_DISCS),
                    changed("hill-climber", BARS),
                    changed("hill-climber", ROUTED),
                    changed("hill-climber", MOUNTED),
                    changed("hill-climber", FOOTED),
                    changedText(Cars.text("hill-climber", "side: driver", "side: driver\n      " + WELD), WELDED),
                    changed("heavy-tourer", MECHANISMS),
                    changed("hill-climber", HOT_DISCS),
                    changed("hill-climber", CLUTCHED),
                    changed("heavy-tourer", FORKED),
                    changed("heavy-tourer", EVERY_CAR),
                    changed("heavy-tourer", TANDEM.subList(0, 4)))
            .flatMap(List::stream)
            .toList();

    /** A car as far as workings need it. */
    static List<org.brakewright.findings.Assessment> assessed() {
        return Stream.concat(
                        Cars.ALL.stream().map(Cars::text),
                        Stream.of(
                                change(Cars.text("shop-pickup"), PINNED_SHOES),
                                change(Cars.text("hill-climber"), TURNING_BAR)))
                .map(Cars::assessed)
                .toList();
    }

    private OddCars() {}

    /** What every rule says about every car. */
    static List<Finding> findings() {
        return FACTS.stream()
                .flatMap(facts -> Rules.all().stream().flatMap(rule -> rule.judge(facts).stream()))
                .toList();
    }

    /** Pads that are down to a friction while the discs are still warm only. */
    private static String pads(String friction) {
        return "heat.front.friction_curve[1].friction=" + friction + " & heat.rear.friction_curve[1].friction="
                + friction
                + " & heat.front.friction_curve[1].temperature=200 °C & heat.rear.friction_curve[1].temperature=200 °C"
                + " & heat.front.friction_curve[2].friction=" + friction + " & heat.rear.friction_curve[2].friction="
                + friction;
    }

    private static List<Facts> changed(String car, List<String> changes) {
        return changedText(Cars.text(car), changes);
    }

    private static List<Facts> changedText(String text, List<String> changes) {
        List<Facts> facts = new ArrayList<>();
        for (String change : changes) {
            facts.add(facts(change(text, change), change));
        }
        return facts;
    }

    private static String change(String text, String change) {
        String changed = text;
        for (String edit : change.isEmpty() ? new String[0] : change.split(" & ", -1)) {
            String[] parts = edit.split("=", 2);
            changed = switch (SpanEdit.apply(changed, parts[0], parts[1])) {
                case EditOutcome.Edited edited -> edited.text();
                case EditOutcome.Refused refused -> throw new AssertionError(edit + ": " + refused.problem());
            };
        }
        return changed;
    }

    private static Analysis inFull(ResolvedBuild build) {
        Analysis analysis = Analyse.withAdvice(build);
        return analysis.with(Stops.of(build, analysis.hardStop()));
    }

    private static Facts facts(String text, String name) {
        if (!(BuildFile.read(text, Cars::beside) instanceof ReadOutcome.Usable usable)) {
            throw new AssertionError(name + ": " + BuildFile.read(text, Cars::beside));
        }
        return switch (Resolve.resolve(usable.build())) {
            case Resolution.Resolved resolved ->
                new Facts(
                        resolved.build(),
                        inFull(resolved.build()),
                        resolved.ledger().stream()
                                .collect(Collectors.toMap(Assumption::path, Assumption::tag, (first, again) -> first)));
            case Resolution.Unusable unusable -> throw new AssertionError(name + ": " + unusable.problems());
        };
    }
}
