package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.analysis.brake.ShoePair;
import org.brakewright.model.Given;
import org.brakewright.model.brake.DrumBrake;
import org.brakewright.model.resolved.ResolvedBrake.FrictionStates;
import org.brakewright.model.resolved.ResolvedShoes;
import org.jspecify.annotations.Nullable;

/**
 * What cold, heat and water do to a drum: through the friction of its linings where the shoes are known, since they
 * amplify it, otherwise by its factor.
 */
final class ResolveDrumStates {
    private final Values values;
    private final String path;
    private final DrumBrake drum;

    ResolveDrumStates(Values values, String path, DrumBrake drum) {
        this.values = values;
        this.path = path;
        this.drum = drum;
    }

    /**
     * One state as written, and what is assumed without.
     *
     * @param name as at the end of the keys: "cold"
     * @param factor brake factor as given
     * @param friction lining friction as given
     * @param factorShare of the working factor
     * @param frictionShare of the working friction
     */
    private record Written(
            String name,
            @Nullable Given factor,
            @Nullable Given friction,
            Default factorShare,
            Default frictionShare) {}

    /** Brake force over that of the working brake in each state. */
    FrictionStates states(ResolveBrake.Factor working) {
        return new FrictionStates(
                share(
                        working,
                        new Written(
                                "cold",
                                drum.brakeFactorCold(),
                                drum.liningFrictionCold(),
                                FrictionDefaults.DRUM_COLD,
                                FrictionDefaults.LINING_COLD)),
                share(
                        working,
                        new Written(
                                "hot",
                                drum.brakeFactorHot(),
                                drum.liningFrictionHot(),
                                FrictionDefaults.DRUM_HOT,
                                FrictionDefaults.LINING_HOT)),
                share(
                        working,
                        new Written(
                                "wet",
                                drum.brakeFactorWet(),
                                drum.liningFrictionWet(),
                                FrictionDefaults.DRUM_WET,
                                FrictionDefaults.LINING_WET)));
    }

    private double share(ResolveBrake.Factor working, Written written) {
        check(written);
        Optional<ResolvedShoes> shoes = working.shoes();
        if (shoes.isEmpty() || written.factor() != null) {
            return values.share(
                    written.factor(), path + ".brake_factor_" + written.name(), written.factorShare(), working.value());
        }
        double friction = shoes.get().friction()
                * values.share(
                        written.friction(),
                        path + ".lining_friction_" + written.name(),
                        written.frictionShare(),
                        shoes.get().friction());
        return ShoePair.reckoned(ShoePair.of(shoes.get()).forward(friction)) / working.value();
    }

    private void check(Written written) {
        Given friction = written.friction();
        if (friction == null) {
            return;
        }
        String key = path + ".lining_friction_" + written.name();
        if (drum.shoeGeometry() == null) {
            values.problem(
                    key,
                    friction.quantity().written(),
                    "The friction of the linings says nothing without the shoes that it works through.",
                    "shoe_geometry beside it, or brake_factor_" + written.name() + " in its place");
        } else if (written.factor() != null) {
            values.problem(
                    key,
                    friction.quantity().written(),
                    "What the drum does in this state is given twice, as friction and as factor.",
                    "one of lining_friction_" + written.name() + " and brake_factor_" + written.name());
        }
    }
}
