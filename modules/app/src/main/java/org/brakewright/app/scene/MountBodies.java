package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.mount.MountShape;
import org.brakewright.analysis.mount.MountShape.Bar;
import org.brakewright.analysis.mount.MountShape.Moved;
import org.brakewright.analysis.mount.MountShape.Sheet;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.app.page.PageView;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.Push;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.scene.SceneView.Tone;
import org.brakewright.app.words.Show;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Panel, plates, brackets and braces, and what a push on the brake pedal does to them and to the pedal. */
final class MountBodies {
    private static final double MEGAPASCAL = 1e6;

    /** Parts of the pedal are drawn with it. */
    private static final Map<String, String> PEDAL = Map.of("mount.arm", "pedal:arm", "mount.rod", "pedal:rod");

    private final Show show;
    private final MountShape shape;
    private final Place zero;

    MountBodies(Show show, MountShape shape, Place zero) {
        this.show = show;
        this.shape = shape;
        this.zero = zero;
    }

    List<Body> bodies() {
        List<Body> bodies = new ArrayList<>();
        for (Sheet sheet : shape.sheets()) {
            bodies.add(new Body(
                    key(sheet.path()),
                    sheet.name(),
                    Group.MOUNT,
                    Shape.MESH,
                    places(sheet.points()),
                    0,
                    sheet.triangles(),
                    Tone.METAL,
                    "As it is cut into triangles to be computed."));
        }
        for (Bar bar : shape.bars()) {
            if (!PEDAL.containsKey(bar.path())) {
                bodies.add(new Body(
                        key(bar.path()),
                        name(bar),
                        Group.MOUNT,
                        Shape.ROD,
                        places(bar.points()),
                        Spots.millimetre(bar.radius()),
                        List.of(),
                        Tone.METAL,
                        bracket(bar)
                                ? "Taken as rigid; drawn as ribs to what holds it, since its sheet is not told here."
                                : "Drawn as a round bar of as much metal."));
            }
        }
        return bodies;
    }

    private static boolean bracket(Bar bar) {
        return bar.path().startsWith("mount.brackets");
    }

    private static String name(Bar bar) {
        return bracket(bar) ? "bracket " + bar.name() : bar.name();
    }

    private static String key(String path) {
        return PEDAL.getOrDefault(path, path);
    }

    List<Push> pushes() {
        return shape.pushes().stream().map(this::push).toList();
    }

    /** The panels side by side: how far each is pushed out of its plane by the same foot. */
    PageView.Chart bulges() {
        Unit unit = show.system().unit(Dimension.LENGTH);
        List<PageView.Series> series = new ArrayList<>();
        for (MountShape.Push push : shape.pushes().reversed()) {
            if (push.asked() == Asked.FUNCTION) {
                series.add(new PageView.Series(
                        dress(push.dress()),
                        "case_" + (series.size() + 1),
                        push.bulge().stream()
                                .map(point -> unit.fromSi(point.upM()))
                                .toList(),
                        push.bulge().stream()
                                .<@Nullable Double>map(point -> unit.fromSi(point.forwardM()))
                                .toList()));
            }
        }
        return new PageView.Chart(
                "How far the panel is pushed out of its plane",
                "Movement along a line up the panel through the pivot under the foot in use, for each panel.",
                "up from the panel's zero, " + unit.symbol(),
                "forward, " + unit.symbol(),
                series);
    }

    private static String dress(Dress dress) {
        return switch (dress) {
            case BARE -> "bare";
            case PATCHED -> "patched";
            case DOUBLED -> "doubled";
            case BRACED -> "all";
        };
    }

    private Push push(MountShape.Push push) {
        List<SceneView.Moved> moved = new ArrayList<>();
        for (int i = 0; i < shape.sheets().size(); i++) {
            moved.add(moved(shape.sheets().get(i).path(), push.sheets().get(i)));
        }
        for (int i = 0; i < shape.bars().size(); i++) {
            Moved bar = push.bars().get(i);
            if (!bar.shifts().isEmpty()) {
                moved.add(moved(shape.bars().get(i).path(), bar));
            }
            if (shape.bars().get(i).path().equals("mount.arm")) {
                Place pad = bar.shifts().getLast();
                Place pivot = bar.shifts().getFirst();
                moved.add(new SceneView.Moved("pedal:pad", Spots.of(pad, pad), List.of()));
                moved.add(new SceneView.Moved("pedal:pivot", Spots.of(pivot, pivot), List.of()));
            }
        }
        return new Push(
                push.dress() + ":" + push.asked(),
                name(push),
                sentence(push),
                moved,
                megapascal(push.highestPa()),
                Spots.of(Placing.moved(push.worst(), zero)));
    }

    private static SceneView.Moved moved(String path, Moved moved) {
        return new SceneView.Moved(
                key(path),
                Spots.of(moved.shifts().toArray(Place[]::new)),
                moved.stresses().stream().map(MountBodies::megapascal).toList());
    }

    private String name(MountShape.Push push) {
        String foot = show.value(push.footN(), Dimension.FORCE);
        return switch (push.dress()) {
            case BRACED -> foot + ", " + asked(push.asked());
            case DOUBLED -> foot + ", without braces";
            case PATCHED -> foot + ", without braces and doublers";
            case BARE -> foot + ", bare panel";
        };
    }

    private static String asked(Asked asked) {
        return switch (asked) {
            case FUNCTION -> "in use";
            case STIFFNESS -> "without lasting set";
            case STRENGTH -> "in an emergency";
        };
    }

    private String sentence(MountShape.Push push) {
        String braces = push.dress() == Dress.BRACED ? "" : " Braces are drawn where they would be.";
        return "The brake pad moves " + show.value(push.padM(), Dimension.LENGTH) + "; the greatest stress is "
                + show.stress(push.highestPa()) + ", at the ring." + braces;
    }

    private static double megapascal(double pascal) {
        return Math.rint(pascal / MEGAPASCAL * 10) / 10;
    }

    private List<Double> places(List<Place> places) {
        return Spots.of(places.stream().map(place -> Placing.moved(place, zero)).toArray(Place[]::new));
    }
}
