package org.brakewright.analysis.resolve;

import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.shop.ShopStates;
import org.brakewright.kernel.tubing.FoldedStrip;
import org.brakewright.model.Given;
import org.brakewright.model.resolved.ResolvedShop.Folded;
import org.brakewright.model.resolved.ResolvedShop.Hole;
import org.brakewright.model.shop.FoldedPart;

/** Looks for what keeps a folded part from being made. */
final class FoldedFaults {
    /** A flat that no tool finds, m. */
    private static final double LEAST_FLAT = 0.1e-3;

    private final Values values;
    private final double kFactor;
    private boolean found;

    FoldedFaults(Values values, double kFactor) {
        this.values = values;
        this.kFactor = kFactor;
    }

    /** Whether any part has a fault. */
    boolean found() {
        return found;
    }

    /** Reports all faults of one part. */
    void report(String path, FoldedPart part, Folded folded, OptionalDouble toolRadius) {
        if (toolRadius.isPresent() && folded.insideRadius() < toolRadius.getAsDouble()) {
            fault(
                    path + ".inside_radius",
                    written(part.insideRadius()),
                    "Your tool cannot bend " + part.name() + " as tightly as this.",
                    "shop.tool_radius or more");
        }
        if (folded.bends().size() != folded.legs().size() - 1) {
            fault(
                    path + ".bends",
                    "" + folded.bends().size(),
                    "Between " + folded.legs().size() + " legs there are "
                            + (folded.legs().size() - 1) + " bends.",
                    "one less than legs");
        } else {
            flats(path, part, folded);
        }
    }

    private void flats(String path, FoldedPart part, Folded folded) {
        FoldedStrip strip = ShopStates.strip(folded, kFactor);
        for (int leg = 0; leg < folded.legs().size(); leg++) {
            if (strip.flats().get(leg) < LEAST_FLAT) {
                fault(
                        path + ".legs[" + leg + "]",
                        written(part.legs().get(leg)),
                        "The bends of this leg meet: nothing of it stays flat.",
                        "more than its bends take, "
                                + millimetres(
                                        folded.legs().get(leg) - strip.flats().get(leg)));
            }
        }
        for (int hole = 0; hole < folded.holes().size(); hole++) {
            hole(path + ".holes[" + hole + "]", folded, strip, folded.holes().get(hole));
        }
    }

    private void hole(String path, Folded folded, FoldedStrip strip, Hole hole) {
        if (hole.leg() < 0 || hole.leg() >= folded.legs().size()) {
            fault(
                    path + ".leg",
                    "" + (hole.leg() + 1),
                    folded.name() + " has no such leg.",
                    "1 to " + folded.legs().size());
            return;
        }
        double radius = hole.diameter() / 2;
        double along = strip.place(hole.leg(), hole.along());
        double start = hole.leg() == 0 ? 0 : strip.lines().get(hole.leg() - 1).end();
        double end = start + strip.flats().get(hole.leg());
        if (along - radius <= start || along + radius >= end) {
            fault(
                    path + ".along",
                    millimetres(hole.along()),
                    "The hole does not lie in the flat part of its leg.",
                    between(hole.along() + start + radius - along, hole.along() + end - radius - along));
        }
        if (hole.across() - radius <= 0 || hole.across() + radius >= folded.width()) {
            fault(
                    path + ".across",
                    millimetres(hole.across()),
                    "The hole does not lie within the strip.",
                    between(radius, folded.width() - radius));
        }
        apart(path, folded, strip, hole);
    }

    private void apart(String path, Folded folded, FoldedStrip strip, Hole hole) {
        List<Hole> before = folded.holes().subList(0, folded.holes().indexOf(hole));
        boolean meets = before.stream()
                .filter(other -> other.leg() >= 0 && other.leg() < folded.legs().size())
                .anyMatch(other -> Math.hypot(
                                strip.place(other.leg(), other.along()) - strip.place(hole.leg(), hole.along()),
                                other.across() - hole.across())
                        <= (other.diameter() + hole.diameter()) / 2);
        if (meets) {
            fault(path, "", "The hole overlaps another one of " + folded.name() + ".", "holes apart from each other");
        }
    }

    private void fault(String path, String written, String message, String allowed) {
        found = true;
        values.problem(path, written, message, allowed);
    }

    private static String written(Given given) {
        return given.quantity().written();
    }

    private static String between(double least, double most) {
        return least < most ? millimetres(least) + " to " + millimetres(most) : "a smaller hole";
    }

    private static String millimetres(double metre) {
        return Math.round(metre * 1e4) / 10.0 + " mm";
    }
}
