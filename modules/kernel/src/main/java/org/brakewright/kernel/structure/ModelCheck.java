package org.brakewright.kernel.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.Fault.Kind;
import org.jspecify.annotations.Nullable;

/** Looks for all that contradicts itself in a model and its load cases. */
final class ModelCheck {
    /** Sides of a triangle, or spans, below this share of the distance from the origin drown in rounding. */
    private static final double NOTHING = 1e-9;

    private final StructureModel model;
    private final List<Fault> faults = new ArrayList<>();

    private ModelCheck(StructureModel model) {
        this.model = model;
    }

    static List<Fault> faults(StructureModel model, List<LoadCase> cases) {
        ModelCheck check = new ModelCheck(model);
        check.elements();
        check.links();
        check.supports();
        cases.forEach(each -> each.loads().forEach(check::load));
        return List.copyOf(check.faults);
    }

    private void expect(boolean holds, Kind kind, int what) {
        if (!holds) {
            faults.add(new Fault(kind, what));
        }
    }

    private boolean known(int node) {
        return node >= 0 && node < model.nodes().size();
    }

    private void elements() {
        for (int i = 0; i < model.elements().size(); i++) {
            Element element = model.elements().get(i);
            boolean known = Arrays.stream(element.nodes()).allMatch(this::known);
            expect(known, Kind.ELEMENT_NODE_UNKNOWN, i);
            if (known) {
                shape(element, i);
            }
        }
    }

    private void shape(Element element, int number) {
        switch (element) {
            case Beam beam -> beam(beam, number);
            case Shell shell -> shell(shell, number);
            case Spring spring -> expect(spring.from() != spring.to(), Kind.SPRING_TO_ITSELF, number);
        }
    }

    private void beam(Beam beam, int number) {
        Vector3 span = Geometry.span(beam, model);
        double size = model.nodes().get(beam.start().node()).length() + span.length();
        boolean stretches = span.length() > NOTHING * size;
        expect(stretches, Kind.BEAM_WITHOUT_LENGTH, number);
        double across = span.cross(beam.up()).length();
        expect(!stretches || across > NOTHING * span.length() * beam.up().length(), Kind.BEAM_UP_ALONG_IT, number);
    }

    private void shell(Shell shell, int number) {
        Vector3 a = model.nodes().get(shell.a());
        double ab = model.nodes().get(shell.b()).minus(a).length();
        double ac = model.nodes().get(shell.c()).minus(a).length();
        double side = Math.max(ab, ac);
        boolean spread = Geometry.normal(shell, model).length() > NOTHING * side * side && ab > NOTHING * side;
        expect(spread, Kind.SHELL_WITHOUT_AREA, number);
    }

    private void links() {
        Set<Integer> followers = new HashSet<>();
        boolean sound = true;
        for (RigidLink link : model.links()) {
            expect(known(link.leader()), Kind.LINK_NODE_UNKNOWN, link.leader());
            expect(known(link.follower()), Kind.LINK_NODE_UNKNOWN, link.follower());
            expect(followers.add(link.follower()), Kind.FOLLOWS_TWICE, link.follower());
            sound &= known(link.leader()) && known(link.follower());
        }
        if (sound) {
            circles();
        }
    }

    private void circles() {
        int[] next = Leaders.directLeaders(model.nodes().size(), model.links());
        for (RigidLink link : model.links()) {
            int at = link.leader();
            for (int step = 0; step < next.length && at != link.follower() && next[at] != at; step++) {
                at = next[at];
            }
            expect(at != link.follower(), Kind.FOLLOWS_ITSELF, link.follower());
        }
    }

    private void supports() {
        Set<Integer> followers = new HashSet<>();
        model.links().forEach(link -> followers.add(link.follower()));
        for (Support support : model.supports()) {
            expect(known(support.node()), Kind.SUPPORT_NODE_UNKNOWN, support.node());
            expect(!followers.contains(support.node()), Kind.FOLLOWER_SUPPORTED, support.node());
        }
    }

    private void load(Load load) {
        switch (load) {
            case Load.OnNode push -> expect(known(push.node()), Kind.LOAD_NODE_UNKNOWN, push.node());
            case Load.OnBeam spread ->
                expect(element(spread.element()) instanceof Beam, Kind.LOAD_ELEMENT_UNKNOWN, spread.element());
            case Load.OnShell spread ->
                expect(element(spread.element()) instanceof Shell, Kind.LOAD_ELEMENT_UNKNOWN, spread.element());
            case Load.Settlement give -> expect(holds(give), Kind.SETTLES_UNHELD, give.node());
        }
    }

    private @Nullable Element element(int number) {
        return number >= 0 && number < model.elements().size()
                ? model.elements().get(number)
                : null;
    }

    private boolean holds(Load.Settlement settlement) {
        return model.supports().stream()
                .anyMatch(support ->
                        support.node() == settlement.node() && support.held().contains(settlement.held()));
    }
}
