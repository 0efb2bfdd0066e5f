package org.brakewright.analysis.resolve;

import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.brake.ShoePair;
import org.brakewright.kernel.friction.EffectiveRadius;
import org.brakewright.kernel.hydraulics.Bore;
import org.brakewright.model.Given;
import org.brakewright.model.brake.DiscBrake;
import org.brakewright.model.brake.DrumBrake;
import org.brakewright.model.brake.PadGeometry;
import org.brakewright.model.brake.WheelBrake;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBrake.FrictionStates;
import org.brakewright.model.resolved.ResolvedShoes;
import org.jspecify.annotations.Nullable;

/** Completes the wheel brakes of one axle. */
final class ResolveBrake {
    private final Values values;

    ResolveBrake(Values values) {
        this.values = values;
    }

    ResolvedBrake brake(String path, WheelBrake brake) {
        return switch (brake) {
            case DiscBrake disc -> disc(path, disc);
            case DrumBrake drum -> drum(path, drum);
        };
    }

    private ResolvedBrake disc(String path, DiscBrake disc) {
        double friction = values.take(disc.padFriction(), path + ".pad_friction", Defaults.PAD_FRICTION);
        return new ResolvedBrake.Disc(
                pistonArea(disc.pistons()),
                friction,
                radius(path, disc),
                values.take(disc.thresholdPressure(), path + ".threshold_pressure", Defaults.DISC_THRESHOLD),
                values.take(disc.runningClearance(), path + ".running_clearance", Defaults.RUNNING_CLEARANCE),
                values.take(disc.knockBack(), path + ".knock_back", Defaults.KNOCK_BACK),
                values.take(disc.caliperSpread(), path + ".caliper_spread", Defaults.caliperSpread(disc.caliper())),
                values.take(disc.padCompression(), path + ".pad_compression", Defaults.PAD_COMPRESSION),
                values.take(disc.padSettling(), path + ".pad_settling", Defaults.PAD_SETTLING),
                values.maybe(disc.padWear()),
                values.maybe(disc.ratedPressure()),
                new FrictionStates(
                        values.share(
                                disc.padFrictionCold(),
                                path + ".pad_friction_cold",
                                FrictionDefaults.PADS_COLD,
                                friction),
                        values.share(
                                disc.padFrictionHot(), path + ".pad_friction_hot", FrictionDefaults.PADS_HOT, friction),
                        values.share(
                                disc.padFrictionWet(),
                                path + ".pad_friction_wet",
                                FrictionDefaults.PADS_WET,
                                friction)));
    }

    private double pistonArea(List<Given> pistons) {
        double area = 0;
        for (Given piston : pistons) {
            area += Bore.area(values.need(piston));
        }
        return area;
    }

    private double radius(String path, DiscBrake disc) {
        Given given = disc.effectiveRadius();
        PadGeometry pad = disc.pad();
        if (given != null && pad == null) {
            return values.need(given);
        }
        if (given == null && pad != null) {
            return fromPad(path, pad);
        }
        values.problem(
                path + ".effective_radius",
                given == null ? "" : given.quantity().written(),
                given == null
                        ? "Neither the effective radius nor the pad geometry that gives it is there."
                        : "The effective radius is given twice, as a value and as pad geometry.",
                "one of effective_radius and pad");
        return 0.1;
    }

    private double fromPad(String path, PadGeometry pad) {
        double inner = values.need(pad.innerRadius());
        double outer = values.need(pad.outerRadius());
        if (inner >= outer) {
            values.problem(
                    path + ".pad.inner_radius",
                    pad.innerRadius().quantity().written(),
                    "The inner radius of the rubbed band is not smaller than the outer one.",
                    "less than outer_radius, " + pad.outerRadius().quantity().written());
            return outer;
        }
        return switch (pad.pressure()) {
            case UNIFORM_WEAR -> EffectiveRadius.uniformWear(inner, outer);
            case UNIFORM_PRESSURE -> EffectiveRadius.uniformPressure(inner, outer);
        };
    }

    private ResolvedBrake drum(String path, DrumBrake drum) {
        Factor factor = factor(
                new ResolveShoes.Asked(
                        path, drum.shoes(), drum.drumRadius(), drum.shoeGeometry(), drum.liningFriction()),
                drum.brakeFactor());
        return new ResolvedBrake.Drum(
                factor.value(),
                Bore.area(values.need(drum.wheelCylinder())),
                values.need(drum.drumRadius()),
                values.take(drum.thresholdPressure(), path + ".threshold_pressure", Defaults.DRUM_THRESHOLD),
                values.take(drum.shoeMovement(), path + ".shoe_movement", Defaults.SHOE_MOVEMENT),
                values.take(drum.shoeCompression(), path + ".shoe_compression", Defaults.SHOE_COMPRESSION),
                values.maybe(drum.shoeWear()),
                Optional.ofNullable(drum.cupExpanders()),
                values.maybe(drum.ratedPressure()),
                drum.shoes(),
                factor.shoes(),
                new ResolveDrumStates(values, path, drum).states(factor));
    }

    /**
     * Brake factor of a drum.
     *
     * @param value rolling forward
     * @param shoes it follows from; empty when it was given or assumed
     */
    record Factor(double value, Optional<ResolvedShoes> shoes) {}

    /** The factor from the shoes, or as given, or assumed. */
    Factor factor(ResolveShoes.Asked asked, @Nullable Given given) {
        String path = asked.path() + ".brake_factor";
        if (asked.geometry() == null) {
            return new Factor(values.take(given, path, Defaults.brakeFactor(asked.arrangement())), Optional.empty());
        }
        if (given != null) {
            values.problem(
                    path,
                    given.quantity().written(),
                    "The brake factor is given twice, as a value and as shoe geometry.",
                    "one of brake_factor and shoe_geometry");
        }
        Optional<ResolvedShoes> shoes = new ResolveShoes(values).shoes(asked);
        return new Factor(shoes.map(ResolveBrake::forward).orElse(1.0), shoes);
    }

    private static double forward(ResolvedShoes shoes) {
        return ShoePair.reckoned(ShoePair.of(shoes).forward(shoes.friction()));
    }
}
