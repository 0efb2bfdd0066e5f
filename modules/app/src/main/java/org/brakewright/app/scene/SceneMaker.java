package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.mount.MountShapes;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.NamedPlace;
import org.brakewright.app.scene.SceneView.Scale;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;

/** Puts everything that has a place in the car into one view. */
public final class SceneMaker {
    private static final double MILLIMETRE = 1e-3;
    private static final Place ZERO = new Place(0, 0, 0);

    private final Show show;

    /** Makes views in a system of units. */
    public SceneMaker(Show show) {
        this.show = show;
    }

    /** The view of a car, every number computed, at a revision of the build file. */
    public SceneView make(Assessment assessment, int revision) {
        ResolvedBuild build = assessment.resolved();
        LinesState state = assessment.analysis().lines();
        List<Body> bodies = new ArrayList<>();
        List<NamedPlace> places = new ArrayList<>();
        Optional<PedalBodies> pedal = pedal(build);
        pedal.ifPresent(drawn -> {
            bodies.addAll(drawn.bodies());
            places.addAll(drawn.places());
        });
        Optional<MountBodies> mount = mount(build);
        mount.ifPresent(drawn -> bodies.addAll(drawn.bodies()));
        if (state != null) {
            LineBodies lines = new LineBodies(show, build.lines().orElseThrow(), state);
            bodies.addAll(lines.bodies());
            places.addAll(lines.places());
        }
        FootwellState footwell = assessment.analysis().footwell();
        if (footwell != null) {
            var drawn = new FootwellBodies(show, build.footwell().orElseThrow(), footwell, FootwellBodies.keys(bodies));
            bodies.addAll(drawn.bodies());
            places.addAll(drawn.places());
        }
        return new SceneView(
                revision,
                advice(build, pedal.isPresent()),
                scale(),
                bodies,
                places,
                mount.map(MountBodies::pushes).orElse(List.of()),
                mount.map(MountBodies::bulges).orElse(null));
    }

    /** The pedal at its place; alone where nothing else has one. */
    private static Optional<PedalBodies> pedal(ResolvedBuild build) {
        return zero(build)
                .map(zero -> PedalBodies.of(build.mount().orElseThrow().pedal(), zero))
                .or(() -> build.lines().isPresent()
                        ? Optional.empty()
                        : build.pedal().mechanism().map(PedalBodies::alone));
    }

    private Optional<MountBodies> mount(ResolvedBuild build) {
        return zero(build).flatMap(zero -> MountShapes.of(build).map(shape -> new MountBodies(show, shape, zero)));
    }

    /** Where the mount's zero lies from the zero of the car; empty when that is not known. */
    private static Optional<Place> zero(ResolvedBuild build) {
        Optional<ResolvedMount> mount = build.mount();
        return mount.flatMap(ResolvedMount::placeInCar)
                .or(() -> mount.isPresent() && build.lines().isEmpty() ? Optional.of(ZERO) : Optional.empty());
    }

    private static String advice(ResolvedBuild build, boolean pedal) {
        if (build.lines().isEmpty() && !pedal) {
            return "Nothing has a place in space yet: give the pedal's points (pedal.mechanism), the mount or the plumbing.";
        }
        String missing = pedal
                ? ""
                : build.mount().isPresent()
                        ? " Mount and pedal are left out, since nobody has told where they lie among the lines: give mount.place_in_car."
                        : " The pedal is left out, since nobody has told where it lies: give the mount.";
        return "Drawn from the places in the build file, at rest." + missing;
    }

    private Scale scale() {
        Unit unit = show.system().unit(Dimension.LENGTH);
        return new Scale(unit.symbol(), unit.fromSi(MILLIMETRE), show.system() == UnitSystem.US ? 2 : 1);
    }
}
