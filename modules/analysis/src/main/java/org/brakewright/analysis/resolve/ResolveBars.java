package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.model.Given;
import org.brakewright.model.mount.Angle;
import org.brakewright.model.mount.Bracket;
import org.brakewright.model.mount.Channel;
import org.brakewright.model.mount.CrossTube;
import org.brakewright.model.mount.FlatBar;
import org.brakewright.model.mount.Profile;
import org.brakewright.model.mount.RectangularTube;
import org.brakewright.model.mount.RoundBar;
import org.brakewright.model.mount.RoundTube;
import org.brakewright.model.mount.SquareTube;
import org.brakewright.model.mount.Stringer;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.Shape;

/** Completes the bars of a mount. */
final class ResolveBars {
    private final Values values;
    private final MountPoints points;
    private final MountMaterials materials;
    private final List<Bracket> brackets;

    ResolveBars(Values values, MountMaterials materials, List<Bracket> brackets) {
        this.values = values;
        this.points = new MountPoints(values);
        this.materials = materials;
        this.brackets = brackets;
    }

    List<ResolvedMount.Stringer> stringers(List<Stringer> stringers) {
        List<ResolvedMount.Stringer> resolved = new ArrayList<>();
        for (int i = 0; i < stringers.size(); i++) {
            String path = "mount.stringers[" + i + "]";
            Stringer stringer = stringers.get(i);
            resolved.add(new ResolvedMount.Stringer(
                    stringer.name(),
                    profile(stringer.profile()),
                    materials.of(stringer.material(), path + ".material"),
                    near(stringer, path),
                    points.place(stringer.body()),
                    stringer.nearEnd(),
                    stringer.bodyEnd()));
        }
        return resolved;
    }

    private Near near(Stringer stringer, String path) {
        if (stringer.onPanel() != null && stringer.foot() != null && stringer.onBracket() == null) {
            return new Near.OnPanel(points.spot(stringer.onPanel()), values.need(stringer.foot()));
        }
        if (stringer.onPanel() == null && stringer.onBracket() != null && stringer.at() != null) {
            bracket(stringer.onBracket(), path + ".on_bracket");
            return new Near.OnBracket(stringer.onBracket(), points.place(stringer.at()));
        }
        values.problem(
                path,
                stringer.name(),
                "The stringer's near end is not told, or told twice.",
                "on_panel with foot, or on_bracket with at");
        return new Near.OnBracket("", points.place(stringer.body()));
    }

    private void bracket(String name, String path) {
        if (brackets.stream().noneMatch(bracket -> bracket.name().equals(name))) {
            values.problem(
                    path,
                    name,
                    "No bracket has this name.",
                    String.join(", ", brackets.stream().map(Bracket::name).toList()));
        }
    }

    ResolvedMount.CrossTube crossTube(CrossTube tube) {
        bracket(tube.carries(), "mount.cross_tube.carries");
        return new ResolvedMount.CrossTube(
                profile(tube.profile()),
                materials.of(tube.material(), "mount.cross_tube.material"),
                points.place(tube.right()),
                points.place(tube.left()),
                tube.ends(),
                tube.carries());
    }

    /** The section of a bar; walls that leave no hollow are refused. */
    ResolvedMount.Profile profile(Profile profile) {
        return switch (profile) {
            case RoundTube(Given diameter, Given wall) -> hollow(Shape.ROUND_TUBE, List.of(diameter, diameter, wall));
            case SquareTube(Given width, Given wall) -> hollow(Shape.RECTANGULAR_TUBE, List.of(width, width, wall));
            case RectangularTube(Given width, Given height, Given wall) ->
                hollow(Shape.RECTANGULAR_TUBE, List.of(width, height, wall));
            case Angle(Given width, Given height, Given thickness) ->
                hollow(Shape.ANGLE, List.of(width, height, thickness));
            case Channel(Given width, Given height, Given thickness) ->
                hollow(Shape.CHANNEL, List.of(width, height, thickness));
            case RoundBar(Given diameter) ->
                new ResolvedMount.Profile(Shape.ROUND_BAR, values.need(diameter), values.need(diameter), 0);
            case FlatBar(Given width, Given height) ->
                new ResolvedMount.Profile(Shape.FLAT_BAR, values.need(width), values.need(height), 0);
        };
    }

    private ResolvedMount.Profile hollow(Shape shape, List<Given> sizes) {
        double width = values.need(sizes.get(0));
        double height = values.need(sizes.get(1));
        Given wall = sizes.get(2);
        double most = Math.min(width, height) / 2;
        if (values.need(wall) >= most) {
            values.problem(
                    wall.path(),
                    Values.written(wall),
                    "The walls meet in the middle: nothing of the section is hollow.",
                    "less than half of the smaller side; else a bar");
            return new ResolvedMount.Profile(Shape.FLAT_BAR, width, height, 0);
        }
        return new ResolvedMount.Profile(shape, width, height, values.need(wall));
    }
}
