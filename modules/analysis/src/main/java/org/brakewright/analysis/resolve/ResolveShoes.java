package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.model.Given;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.brake.ShoeGeometry;
import org.brakewright.model.resolved.ResolvedShoes;
import org.brakewright.model.resolved.ResolvedShoes.Shoe;
import org.jspecify.annotations.Nullable;

/** Completes the shoes of a drum and refuses those that cannot stand in it. */
final class ResolveShoes {
    private static final double LINING_RANGE = Math.toRadians(10);

    private final Values values;

    ResolveShoes(Values values) {
        this.values = values;
    }

    /**
     * What is known of a drum with shoes.
     *
     * @param path of the drum
     * @param arrangement of its shoes
     * @param radius of the drum
     * @param geometry of its shoes
     * @param friction of its linings
     */
    record Asked(
            String path,
            ShoeArrangement arrangement,
            Given radius,
            @Nullable ShoeGeometry geometry,
            @Nullable Given friction) {

        String at(String key) {
            return path + ".shoe_geometry." + key;
        }

        boolean selfEnergising() {
            return arrangement == ShoeArrangement.SELF_ENERGISING;
        }
    }

    /** The shoes; empty when no geometry is given or it cannot be. */
    Optional<ResolvedShoes> shoes(Asked asked) {
        ShoeGeometry geometry = asked.geometry();
        if (geometry == null) {
            return Optional.empty();
        }
        double friction = values.take(asked.friction(), asked.path() + ".lining_friction", Defaults.LINING_FRICTION);
        Shoe first = new Shoe(
                values.need(geometry.pivotDistance()),
                values.need(geometry.actuationArm()),
                values.need(geometry.liningStart()),
                values.need(geometry.liningEnd()));
        Shoe second = second(asked, geometry, first);
        int faults = values.problems().size();
        check(asked, geometry, first, second);
        return values.problems().size() > faults
                ? Optional.empty()
                : Optional.of(new ResolvedShoes(
                        asked.arrangement(),
                        values.need(asked.radius()),
                        friction,
                        first,
                        second,
                        values.maybe(geometry.liningWidth())));
    }

    private Shoe second(Asked asked, ShoeGeometry geometry, Shoe first) {
        if (asked.arrangement() == ShoeArrangement.TWO_LEADING) {
            return first;
        }
        double start = other(geometry.otherLiningStart(), asked.at("other_lining_start"), first.liningStart());
        double end = other(geometry.otherLiningEnd(), asked.at("other_lining_end"), first.liningEnd());
        Given anchor = geometry.anchorDistance();
        if (!asked.selfEnergising() || anchor == null) {
            return new Shoe(first.pivotDistance(), first.actuationArm(), start, end);
        }
        double distance = values.need(anchor);
        return new Shoe(distance, distance + first.pivotDistance(), start, end);
    }

    private double other(@Nullable Given given, String path, double first) {
        double low = Math.max(0, first - LINING_RANGE);
        double high = Math.min(Math.PI, first + LINING_RANGE);
        return values.take(given, path, Default.estimate(first, low, high, "taken as on the first shoe"));
    }

    private void check(Asked asked, ShoeGeometry geometry, Shoe first, Shoe second) {
        inside(asked, "pivot_distance", geometry.pivotDistance(), "The shoe's pivot");
        lining(asked, "lining_start", geometry.liningStart(), first);
        if (asked.arrangement() == ShoeArrangement.TWO_LEADING) {
            unused(asked, "other_lining_start", geometry.otherLiningStart(), "Two leading shoes are alike.");
            unused(asked, "other_lining_end", geometry.otherLiningEnd(), "Two leading shoes are alike.");
        } else if (first.liningStart() < first.liningEnd()) {
            lining(asked, "other_lining_start", geometry.otherLiningStart(), second);
        }
        if (asked.selfEnergising()) {
            servo(asked, geometry, first);
        } else {
            String why = "Only self-energising shoes rest on an anchor beside the wheel cylinder.";
            unused(asked, "anchor_distance", geometry.anchorDistance(), why);
            arm(asked, geometry, first);
        }
    }

    private void inside(Asked asked, String key, Given distance, String what) {
        if (values.need(distance) >= values.need(asked.radius())) {
            values.problem(
                    asked.at(key),
                    written(distance),
                    what + " does not lie inside the drum.",
                    "less than drum_radius, " + written(asked.radius()));
        }
    }

    private void lining(Asked asked, String key, @Nullable Given start, Shoe shoe) {
        if (shoe.liningStart() >= shoe.liningEnd()) {
            values.problem(
                    asked.at(key),
                    written(start),
                    "The lining does not start before it ends, counted from the shoe's pivot.",
                    "less than " + key.replace("start", "end"));
        }
    }

    private void unused(Asked asked, String key, @Nullable Given given, String why) {
        if (given != null) {
            values.problem(asked.at(key), written(given), why, "leave " + key + " out, or correct shoes");
        }
    }

    private void arm(Asked asked, ShoeGeometry geometry, Shoe first) {
        if (first.actuationArm() >= first.pivotDistance() + values.need(asked.radius())) {
            values.problem(
                    asked.at("actuation_arm"),
                    written(geometry.actuationArm()),
                    "The wheel cylinder would lie outside the drum.",
                    "less than pivot_distance and drum_radius together");
        }
    }

    private void servo(Asked asked, ShoeGeometry geometry, Shoe first) {
        if (first.actuationArm() <= first.pivotDistance()) {
            values.problem(
                    asked.at("actuation_arm"),
                    written(geometry.actuationArm()),
                    "The wheel cylinder of self-energising shoes lies across the hub from the floating adjuster.",
                    "more than pivot_distance, " + written(geometry.pivotDistance()));
        }
        Given anchor = geometry.anchorDistance();
        if (anchor == null) {
            values.problem(
                    asked.at("anchor_distance"),
                    "",
                    "Self-energising shoes push on an anchor, and without it there is no brake factor.",
                    "the distance from the middle of the hub to the anchor");
            return;
        }
        inside(asked, "anchor_distance", anchor, "The anchor");
        if (first.actuationArm() > first.pivotDistance() + values.need(anchor)) {
            values.problem(
                    asked.at("actuation_arm"),
                    written(geometry.actuationArm()),
                    "The wheel cylinder would lie beyond the anchor.",
                    "at most pivot_distance and anchor_distance together");
        }
    }

    private static String written(@Nullable Given given) {
        return given == null ? "assumed" : given.quantity().written();
    }
}
