package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.mount.MountState.ReactionState;
import org.brakewright.kernel.structure.Element;
import org.brakewright.kernel.structure.Spring;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;

/** What the body has to take, under a straight push. */
final class Reactions {
    /** Sides that are sprung hand on their force along one bed. */
    private static final String SPRUNG = "mount.panel";

    private final LoadedMount loaded;
    private final Map<String, List<Held>> held = new LinkedHashMap<>();

    /** Force and moment into the body at a place, for 1 N. */
    private record Held(Vector3 at, Wrench wrench) {}

    private Reactions(LoadedMount loaded) {
        this.loaded = loaded;
        loaded.model()
                .grounded()
                .forEach((path, nodes) -> nodes.forEach(node -> {
                    Wrench reaction = loaded.straight().reaction(node);
                    Wrench body = new Wrench(
                            reaction.force().times(-1), reaction.moment().times(-1));
                    MountModel.note(held, path, new Held(place(node), body));
                }));
        List<Element> elements = loaded.model().structure().elements();
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Spring spring && spring.to() == Spring.GROUND && stiff(spring)) {
                MountModel.note(
                        held,
                        SPRUNG,
                        new Held(place(spring.from()), loaded.straight().spring(i)));
            }
        }
    }

    private static boolean stiff(Spring spring) {
        return spring.rate().shift().length() > 0;
    }

    private Vector3 place(int node) {
        return loaded.model().structure().nodes().get(node);
    }

    static List<ReactionState> of(LoadedMount loaded, PartNames names) {
        Reactions reactions = new Reactions(loaded);
        List<ReactionState> states = new ArrayList<>();
        reactions.held.forEach((path, all) -> states.add(reactions.state(path, names, all)));
        return List.copyOf(states);
    }

    private ReactionState state(String path, PartNames names, List<Held> all) {
        double strength = loaded.mount().loads().strength();
        Vector3 middle =
                all.stream().map(Held::at).reduce(Vector3.ZERO, Vector3::plus).times(1.0 / all.size());
        Vector3 force = Vector3.ZERO;
        Vector3 moment = Vector3.ZERO;
        for (Held each : all) {
            force = force.plus(each.wrench().force());
            moment = moment.plus(
                    PedalForces.about(each.wrench(), each.at(), middle).moment());
        }
        force = force.times(strength);
        return new ReactionState(
                path,
                path.equals(SPRUNG) ? "panel, sprung sides" : names.of(path),
                LoadedMount.place(middle),
                force.x(),
                force.y(),
                force.z(),
                force.length(),
                moment.length() * strength);
    }
}
