package org.brakewright.analysis.working;

import static org.brakewright.quantity.Dimension.ANGLE;
import static org.brakewright.quantity.Dimension.LENGTH;
import static org.brakewright.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.brake.ShoePair;
import org.brakewright.analysis.working.Step.Operand;
import org.brakewright.kernel.friction.BrakeFactor;
import org.brakewright.kernel.friction.DrumShoe;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedParking;
import org.brakewright.model.resolved.ResolvedShoes;

/** Opens the brake factor of every drum of which the shoes are known; one that locks by itself ends at that friction. */
final class DrumWorkings {
    private final List<Step> steps = new ArrayList<>();
    private final String where;
    private final ShoePair pair;
    private final double friction;

    private DrumWorkings(String where, ResolvedShoes shoes) {
        this.where = where;
        this.pair = ShoePair.of(shoes);
        this.friction = shoes.friction();
    }

    static void add(ResolvedBuild build, List<Working> workings) {
        List<Step> steps = new ArrayList<>();
        shoes(build.front()).ifPresent(shoes -> steps.addAll(new DrumWorkings("front", shoes).open()));
        shoes(build.rear()).ifPresent(shoes -> steps.addAll(new DrumWorkings("rear", shoes).open()));
        build.parking()
                .flatMap(ResolvedParking::ownShoes)
                .ifPresent(shoes -> steps.addAll(new DrumWorkings("parking", shoes).open()));
        if (!steps.isEmpty()) {
            workings.add(new Working("drum_factor", List.copyOf(steps)));
        }
    }

    private static Optional<ResolvedShoes> shoes(ResolvedBrake brake) {
        return switch (brake) {
            case ResolvedBrake.Drum drum -> drum.shoes();
            case ResolvedBrake.Disc disc -> Optional.empty();
        };
    }

    private List<Step> open() {
        lock("first shoe", pair.first());
        if (pair.forward(friction) instanceof BrakeFactor.Stable whole) {
            factor(whole.value());
        }
        return steps;
    }

    private void factor(double whole) {
        double first = leading("first shoe", pair.first());
        switch (pair.arrangement()) {
            case LEADING_TRAILING -> {
                double second = pair.second().trailing(friction).value();
                shoe("trailing_shoe", "second shoe", pair.second(), second);
                sum(first, second, whole);
            }
            case TWO_LEADING -> sum(first, first, whole);
            case SELF_ENERGISING -> {
                lock("second shoe", pair.second());
                series(first, leading("second shoe", pair.second()), whole);
            }
        }
    }

    private void lock(String which, DrumShoe shoe) {
        put("shoe_self_lock", which, shoe.selfLockFriction(), place(shoe));
    }

    private double leading(String which, DrumShoe shoe) {
        double value = shoe.leading(friction) instanceof BrakeFactor.Stable stable ? stable.value() : 0;
        shoe("leading_shoe", which, shoe, value);
        return value;
    }

    private void shoe(String law, String which, DrumShoe shoe, double value) {
        List<Operand> operands = new ArrayList<>(place(shoe));
        operands.add(new Operand("c", shoe.actuationArm(), LENGTH));
        operands.add(new Operand("mu", friction, RATIO));
        put(law, which, value, operands);
    }

    private static List<Operand> place(DrumShoe shoe) {
        return List.of(
                new Operand("a", shoe.pivotDistance(), LENGTH),
                new Operand("r", shoe.drumRadius(), LENGTH),
                new Operand("t_1", shoe.heelAngle(), ANGLE),
                new Operand("t_2", shoe.toeAngle(), ANGLE));
    }

    private void sum(double first, double second, double whole) {
        put("shoe_sum", "", whole, List.of(new Operand("S_1", first, RATIO), new Operand("S_2", second, RATIO)));
    }

    private void series(double first, double second, double whole) {
        DrumShoe primary = pair.first();
        put(
                "duo_servo",
                "",
                whole,
                List.of(
                        new Operand("S_1", first, RATIO),
                        new Operand("S_2", second, RATIO),
                        new Operand("h_1", primary.actuationArm() - primary.pivotDistance(), LENGTH),
                        new Operand("h_2", primary.pivotDistance(), LENGTH),
                        new Operand("h_a", pair.second().pivotDistance(), LENGTH),
                        new Operand("r", primary.drumRadius(), LENGTH)));
    }

    private void put(String law, String which, double result, List<Operand> operands) {
        String place = which.isEmpty() ? where : where + ", " + which;
        steps.add(new Step(law, place, List.copyOf(operands), result, RATIO));
    }
}
