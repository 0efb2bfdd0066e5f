package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;
import org.brakewright.sheets.lines.Network.Link;
import org.brakewright.sheets.lines.Network.Part;

/** The network that follows from masters, valves and brakes where no lines are told: a tee in each circuit, a hose to each brake. */
final class UsualNetwork {
    private final ResolvedBuild build;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();

    private UsualNetwork(ResolvedBuild build) {
        this.build = build;
    }

    static Network of(ResolvedBuild build) {
        UsualNetwork usual = new UsualNetwork(build);
        boolean twin = build.apply() instanceof ResolvedApply.Twin;
        String front = usual.part(twin ? "front master" : "front chamber", PartKind.MASTER, Circuit.FRONT);
        String rear = usual.part(twin ? "rear master" : "rear chamber", PartKind.MASTER, Circuit.REAR);
        if (build.apply().diagonal()) {
            usual.crossed(front, Circuit.FRONT, "left", "right");
            usual.crossed(rear, Circuit.REAR, "right", "left");
        } else {
            usual.axle(usual.valves(front, Circuit.FRONT, AxleEnd.FRONT), Circuit.FRONT, "front", build.front());
            usual.axle(usual.valves(rear, Circuit.REAR, AxleEnd.REAR), Circuit.REAR, "rear", build.rear());
        }
        if (build.clutch().isPresent()) {
            String clutch = usual.part("clutch master", PartKind.MASTER, Circuit.CLUTCH);
            usual.hose(clutch, usual.part("clutch slave", PartKind.CLUTCH_SLAVE, Circuit.CLUTCH), Circuit.CLUTCH);
        }
        return new Network(Collections.unmodifiableMap(usual.parts), List.copyOf(usual.links));
    }

    /** A front wheel and the rear wheel across, the rear one behind the valve. */
    private void crossed(String master, Circuit circuit, String front, String rear) {
        String tee = tube(master, part(circuit == Circuit.FRONT ? "first tee" : "second tee", PartKind.TEE, circuit));
        hose(tee, wheel("front " + front, build.front(), circuit), circuit);
        hose(valve(tee, circuit, ", " + rear), wheel("rear " + rear, build.rear(), circuit), circuit);
    }

    private void axle(String from, Circuit circuit, String axle, ResolvedBrake brake) {
        String tee = tube(from, part(axle + " tee", PartKind.TEE, circuit));
        hose(tee, wheel(axle + " left", brake, circuit), circuit);
        hose(tee, wheel(axle + " right", brake, circuit), circuit);
    }

    /** The valves of an axle's line, one behind the other; the part itself where there is none. */
    private String valves(String from, Circuit circuit, AxleEnd end) {
        ResolvedApply.Valves valves = build.apply().valves();
        String last = from;
        if (end == AxleEnd.FRONT && valves.metering().isPresent()) {
            last = tube(last, part("metering valve", PartKind.METERING_VALVE, circuit));
        }
        if (valves.proportioning().filter(valve -> valve.line() == end).isPresent()) {
            last = tube(last, part("proportioning valve", PartKind.PROPORTIONING_VALVE, circuit));
        }
        if (valves.second().filter(valve -> valve.line() == end).isPresent()) {
            last = tube(last, part("second valve", PartKind.PROPORTIONING_VALVE, circuit));
        }
        return last;
    }

    /** The valve of one rear wheel with a diagonal split; the part itself where there is none. */
    private String valve(String from, Circuit circuit, String which) {
        return build.apply().valve().isEmpty()
                ? from
                : tube(from, part("proportioning valve" + which, PartKind.PROPORTIONING_VALVE, circuit));
    }

    private String wheel(String name, ResolvedBrake brake, Circuit circuit) {
        boolean disc = brake instanceof ResolvedBrake.Disc;
        return part(
                name + (disc ? " caliper" : " wheel cylinder"),
                disc ? PartKind.CALIPER : PartKind.WHEEL_CYLINDER,
                circuit);
    }

    private String part(String name, PartKind kind, Circuit circuit) {
        parts.put(name, new Part(name, kind, circuit, kind.works()));
        return name;
    }

    private String tube(String from, String to) {
        links.add(new Link("tube to " + to, from, to, false));
        return to;
    }

    private void hose(String from, String to, Circuit circuit) {
        String bracket = tube(from, part(bracket(to), PartKind.HOSE_BRACKET, circuit));
        links.add(new Link("hose to " + to, bracket, to, true));
    }

    /** "front left bracket" before "front left caliper". */
    private static String bracket(String worked) {
        return worked.replaceAll(" (caliper|wheel cylinder|slave)$", "") + " bracket";
    }
}
