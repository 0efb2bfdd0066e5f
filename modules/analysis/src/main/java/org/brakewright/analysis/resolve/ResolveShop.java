package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.model.Given;
import org.brakewright.model.resolved.ResolvedShop;
import org.brakewright.model.resolved.ResolvedShop.Folded;
import org.brakewright.model.resolved.ResolvedShop.Hole;
import org.brakewright.model.resolved.ResolvedShop.Joint;
import org.brakewright.model.shop.FoldedPart;
import org.brakewright.model.shop.LegHole;
import org.brakewright.model.shop.Shop;
import org.brakewright.model.shop.TubeJoint;
import org.jspecify.annotations.Nullable;

/** Completes what the shop makes. */
final class ResolveShop {
    private static final Default K_FACTOR =
            practice(0.41, 0.33, 0.50, "soft steel over a radius like its thickness; try a strip of your own sheet");

    private final Values values;

    ResolveShop(Values values) {
        this.values = values;
    }

    /** What the shop makes; empty when nothing is told. */
    Optional<ResolvedShop> shop(@Nullable Shop shop) {
        return shop == null ? Optional.empty() : Optional.of(told(shop));
    }

    private ResolvedShop told(Shop shop) {
        double kFactor = values.take(shop.kFactor(), "shop.k_factor", K_FACTOR);
        FoldedFaults faults = new FoldedFaults(values, kFactor);
        List<Folded> folded = new ArrayList<>();
        for (FoldedPart part : all(shop.folded())) {
            String path = "shop.folded[" + folded.size() + "]";
            Folded resolved = folded(part);
            faults.report(path, part, resolved, values.maybe(shop.toolRadius()));
            folded.add(resolved);
        }
        List<Joint> joints = new ArrayList<>();
        for (TubeJoint joint : all(shop.joints())) {
            joints.add(joint("shop.joints[" + joints.size() + "]", joint));
        }
        return new ResolvedShop(kFactor, faults.found() ? List.of() : folded, joints);
    }

    private Folded folded(FoldedPart part) {
        return new Folded(
                part.name(),
                values.need(part.thickness()),
                values.need(part.width()),
                values.need(part.insideRadius()),
                si(part.legs()),
                si(part.bends()),
                all(part.holes()).stream().map(this::hole).toList());
    }

    private Hole hole(LegHole hole) {
        return new Hole(
                hole.leg() - 1, values.need(hole.along()), values.need(hole.across()), values.need(hole.diameter()));
    }

    private Joint joint(String path, TubeJoint joint) {
        double branch = values.need(joint.branchDiameter());
        double main = values.need(joint.mainDiameter());
        double offset = joint.offset() == null ? 0 : values.need(joint.offset());
        double angle = values.need(joint.angle());
        if (branch / 2 + Math.abs(offset) > main / 2) {
            values.problem(
                    path + ".branch_diameter",
                    joint.branchDiameter().quantity().written(),
                    "The tube that is cut is wider than the one it meets"
                            + (offset == 0 ? "" : " where it stands off its axis")
                            + ", so it does not end on its side.",
                    "with twice the offset no more than main_diameter, "
                            + joint.mainDiameter().quantity().written());
            return new Joint(joint.name(), main, main, angle, 0);
        }
        return new Joint(joint.name(), branch, main, angle, offset);
    }

    private List<Double> si(List<Given> givens) {
        return givens.stream().map(values::need).toList();
    }

    private static <T> List<T> all(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }
}
