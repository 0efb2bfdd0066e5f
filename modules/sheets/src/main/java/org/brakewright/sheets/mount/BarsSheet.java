package org.brakewright.sheets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakewright.findings.Assessment;
import org.brakewright.model.mount.EndJoint;
import org.brakewright.model.resolved.ResolvedMount.CrossTube;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.Panel;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.model.resolved.ResolvedMount.Profile;
import org.brakewright.model.resolved.ResolvedMount.Stringer;
import org.brakewright.model.resolved.ResolvedMount.Structure;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;

/** What is sawn of which tube: lengths from end point to end point, and the angles that the ends are cut to. */
public final class BarsSheet {
    private BarsSheet() {}

    /** The sheet of a car whose mount has stringers or a cross tube. */
    public static Optional<Draft> of(Assessment assessment) {
        return assessment
                .resolved()
                .mount()
                .map(mount -> mount.structure())
                .filter(structure -> !structure.stringers().isEmpty()
                        || structure.crossTube().isPresent())
                .map(BarsSheet::draft);
    }

    private static Draft draft(Structure structure) {
        var lengths = new ArrayList<List<String>>();
        lengths.add(List.of("bar", "section", "material", "length"));
        var angles = new ArrayList<List<String>>();
        angles.add(List.of("bar", "off plumb", "off the car's length", "off across", "to the panel", "ends"));
        for (Stringer stringer : structure.stringers()) {
            Place near = near(stringer.near(), structure.panel());
            lengths.add(length(
                    stringer.name(), stringer.profile(), stringer.material().name(), span(near, stringer.body())));
            angles.add(angles(stringer.name(), near, stringer.body(), structure.panel(), ends(stringer)));
        }
        structure.crossTube().ifPresent(tube -> cross(tube, structure.panel(), lengths, angles));
        Column column = new Column()
                .heading("Lengths, from end point to end point")
                .table(List.of(2.2, 2.4, 1.4, 2.0), lengths)
                .heading("Angles of the axis")
                .table(List.of(2.2, 1.2, 1.8, 1.2, 1.4, 2.0), angles)
                .words(List.of(
                        "Lengths run along the axis to the points told in the build file: take off what a clevis or a bracket"
                                + " takes, and cut longer where a saddle is filed in.",
                        "Off across is the angle at which the bar meets a tube across the car: the angle of its saddle. To the"
                                + " panel is the angle between axis and sheet: an end that stands on the panel is sawn to it.",
                        "Tack it in place, look, then weld outside the car."));
        return new Draft(
                "mount-bars",
                "braces and cross tube, cut list",
                Draft.Use.CUTTING,
                column,
                List.of("mount.stringers", "mount.cross_tube"));
    }

    private static void cross(CrossTube tube, Panel panel, List<List<String>> lengths, List<List<String>> angles) {
        lengths.add(length("cross tube", tube.profile(), tube.material().name(), span(tube.right(), tube.left())));
        angles.add(angles("cross tube", tube.right(), tube.left(), panel, word(tube.ends())));
    }

    private static String ends(Stringer stringer) {
        return word(stringer.nearEnd()) + ", " + word(stringer.bodyEnd());
    }

    private static String word(EndJoint joint) {
        return joint.name().toLowerCase(Locale.ROOT);
    }

    private static Place near(Near near, Panel panel) {
        return switch (near) {
            case Near.OnBracket(String bracket, Place at) -> at;
            case Near.OnPanel(var spot, double foot) ->
                new Place(Math.sin(panel.rake()) * spot.up(), spot.across(), Math.cos(panel.rake()) * spot.up());
        };
    }

    private static List<String> length(String name, Profile profile, String material, double length) {
        return List.of(name, section(profile), material.replace('_', ' '), Measure.both(length));
    }

    private static String section(Profile profile) {
        String wall = profile.wall() == 0 ? "" : " by " + Measure.metric(profile.wall());
        return switch (profile.shape()) {
            case ROUND_TUBE -> "tube " + Measure.metric(profile.width()) + wall;
            case ROUND_BAR -> "round bar " + Measure.metric(profile.width());
            case RECTANGULAR_TUBE -> "tube " + sides(profile) + wall;
            case FLAT_BAR -> "flat " + sides(profile);
            case ANGLE -> "angle " + sides(profile) + wall;
            case CHANNEL -> "channel " + sides(profile) + wall;
        };
    }

    private static String sides(Profile profile) {
        return Measure.metric(profile.width()) + " by " + Measure.metric(profile.height());
    }

    private static List<String> angles(String name, Place from, Place to, Panel panel, String ends) {
        double length = span(from, to);
        double x = (to.x() - from.x()) / length;
        double y = (to.y() - from.y()) / length;
        double z = (to.z() - from.z()) / length;
        double square = x * Math.cos(panel.rake()) - z * Math.sin(panel.rake());
        return List.of(name, off(z), off(x), off(y), Measure.degrees(Math.asin(Math.min(1, Math.abs(square)))), ends);
    }

    /** The angle to a direction of which the cosine is told, a right one at most. */
    private static String off(double cosine) {
        return Measure.degrees(Math.acos(Math.min(1, Math.abs(cosine))));
    }

    private static double span(Place from, Place to) {
        return Math.sqrt(
                Math.pow(to.x() - from.x(), 2) + Math.pow(to.y() - from.y(), 2) + Math.pow(to.z() - from.z(), 2));
    }
}
