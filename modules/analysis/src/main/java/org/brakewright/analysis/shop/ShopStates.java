package org.brakewright.analysis.shop;

import java.util.List;
import org.brakewright.analysis.shop.ShopState.BendLine;
import org.brakewright.analysis.shop.ShopState.EdgePoint;
import org.brakewright.analysis.shop.ShopState.FlatHole;
import org.brakewright.analysis.shop.ShopState.FlatPart;
import org.brakewright.analysis.shop.ShopState.Saddle;
import org.brakewright.kernel.tubing.FoldedStrip;
import org.brakewright.kernel.tubing.SaddleCut;
import org.brakewright.kernel.tubing.SheetBend;
import org.brakewright.model.resolved.ResolvedShop;
import org.brakewright.model.resolved.ResolvedShop.Folded;
import org.brakewright.model.resolved.ResolvedShop.Hole;
import org.brakewright.model.resolved.ResolvedShop.Joint;

/** Lays flat what the shop folds and joins. */
public final class ShopStates {
    /** Points of a saddle's edge: a chord then lies within 0.02 mm of the curve on any tube of a car. */
    private static final int STEPS = 120;

    private ShopStates() {}

    /** All parts and joints. */
    public static ShopState of(ResolvedShop shop) {
        return new ShopState(
                shop.folded().stream().map(part -> flat(part, shop.kFactor())).toList(),
                shop.joints().stream().map(ShopStates::saddle).toList());
    }

    /** The strip of a part. */
    public static FoldedStrip strip(Folded part, double kFactor) {
        return new FoldedStrip(
                part.legs(), part.bends(), new SheetBend(part.insideRadius(), part.thickness(), kFactor));
    }

    private static FlatPart flat(Folded part, double kFactor) {
        FoldedStrip strip = strip(part, kFactor);
        return new FlatPart(
                part.name(),
                strip.length(),
                part.width(),
                part.thickness(),
                part.insideRadius(),
                kFactor,
                strip.lines().stream()
                        .map(line -> new BendLine(line.start(), line.middle(), line.end(), line.angle()))
                        .toList(),
                part.holes().stream().map(hole -> hole(hole, strip)).toList());
    }

    private static FlatHole hole(Hole hole, FoldedStrip strip) {
        double along = strip.place(hole.leg(), hole.along());
        double nearest = strip.lines().stream()
                .mapToDouble(line -> Math.max(line.start() - along, along - line.end()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return new FlatHole(along, hole.across(), hole.diameter(), nearest - hole.diameter() / 2);
    }

    private static Saddle saddle(Joint joint) {
        SaddleCut cut = new SaddleCut(joint.branchDiameter(), joint.mainDiameter(), joint.angle(), joint.offset());
        List<EdgePoint> edge = cut.unrolled(STEPS).stream()
                .map(flat -> new EdgePoint(flat.across(), flat.up()))
                .toList();
        return new Saddle(
                joint.name(), joint.branchDiameter(), joint.mainDiameter(), joint.angle(), joint.offset(), edge);
    }
}
