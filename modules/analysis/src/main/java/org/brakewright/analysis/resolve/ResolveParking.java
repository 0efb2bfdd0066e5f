package org.brakewright.analysis.resolve;

import java.util.Locale;
import java.util.Optional;
import org.brakewright.analysis.brake.ShoePair;
import org.brakewright.model.Given;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.parking.CaliperLever;
import org.brakewright.model.parking.Control;
import org.brakewright.model.parking.DrumInDisc;
import org.brakewright.model.parking.Parking;
import org.brakewright.model.parking.ServiceShoes;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedParking;
import org.brakewright.model.resolved.ResolvedShoes;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Completes the parking brake. */
final class ResolveParking {
    private static final String ACTS_ON = "parking.acts_on";
    private static final String REVERSE = ACTS_ON + ".reverse_factor";

    private final Values values;

    ResolveParking(Values values) {
        this.values = values;
    }

    /** What the cable works on, and how that holds each way. */
    private record Held(
            double leverRatio, double forward, double reverse, double radius, Optional<ResolvedShoes> ownShoes) {}

    /** The parking brake; empty when none is given or it does not fit the wheel brakes. */
    Optional<ResolvedParking> parking(@Nullable Parking parking, ResolvedBrake front, ResolvedBrake rear) {
        if (parking == null) {
            return Optional.empty();
        }
        Default force = parking.control() == Control.HAND ? Defaults.HAND_FORCE : Defaults.FOOT_FORCE;
        double driver = values.take(parking.driverForce(), "parking.driver_force", force);
        double efficiency =
                values.take(parking.cableEfficiency(), "parking.cable_efficiency", Defaults.CABLE_EFFICIENCY);
        return held(parking, parking.axle() == AxleEnd.FRONT ? front : rear)
                .map(held -> new ResolvedParking(
                        parking.control(),
                        driver,
                        values.need(parking.leverRatio()),
                        efficiency,
                        parking.axle(),
                        held.leverRatio(),
                        held.forward(),
                        held.reverse(),
                        held.radius(),
                        held.ownShoes()));
    }

    private Optional<Held> held(Parking parking, ResolvedBrake brake) {
        return switch (parking.actsOn()) {
            case ServiceShoes shoes ->
                brake instanceof ResolvedBrake.Drum drum
                        ? Optional.of(service(shoes, drum))
                        : unfit(parking, "service_shoes", "discs", "drum_in_disc or caliper_lever");
            case DrumInDisc own ->
                brake instanceof ResolvedBrake.Disc
                        ? Optional.of(own(own))
                        : unfit(parking, "drum_in_disc", "drums", "service_shoes");
            case CaliperLever lever ->
                brake instanceof ResolvedBrake.Disc disc
                        ? Optional.of(caliper(lever, disc))
                        : unfit(parking, "caliper_lever", "drums", "service_shoes");
        };
    }

    private Held service(ServiceShoes shoes, ResolvedBrake.Drum drum) {
        double reverse = reverse(drum.shoes(), shoes.reverseFactor(), drum.arrangement(), drum.brakeFactor());
        return new Held(
                values.need(shoes.shoeLeverRatio()), drum.brakeFactor(), reverse, drum.drumRadius(), Optional.empty());
    }

    private Held own(DrumInDisc own) {
        ResolveBrake.Factor factor = new ResolveBrake(values)
                .factor(
                        new ResolveShoes.Asked(
                                ACTS_ON, own.shoes(), own.drumRadius(), own.shoeGeometry(), own.liningFriction()),
                        own.brakeFactor());
        double reverse = reverse(factor.shoes(), own.reverseFactor(), own.shoes(), factor.value());
        return new Held(
                values.need(own.shoeLeverRatio()),
                factor.value(),
                reverse,
                values.need(own.drumRadius()),
                factor.shoes());
    }

    private Held caliper(CaliperLever lever, ResolvedBrake.Disc disc) {
        double friction = values.take(lever.padFriction(), ACTS_ON + ".pad_friction", Defaults.STANDING_PAD_FRICTION);
        return new Held(
                values.need(lever.padForceRatio()),
                2 * friction,
                2 * friction,
                disc.effectiveRadius(),
                Optional.empty());
    }

    private double reverse(
            Optional<ResolvedShoes> shoes, @Nullable Given given, ShoeArrangement arrangement, double forward) {
        if (shoes.isEmpty()) {
            return values.take(given, REVERSE, Defaults.reverseFactor(arrangement, forward));
        }
        if (given != null) {
            values.problem(
                    REVERSE,
                    given.quantity().written(),
                    "The factor for rolling backward is given twice, as a value and by the shoe geometry.",
                    "one of reverse_factor and shoe_geometry");
        }
        return ShoePair.reckoned(ShoePair.of(shoes.get()).backward(shoes.get().friction()));
    }

    private Optional<Held> unfit(Parking parking, String kind, String fitted, String fitting) {
        String axle = parking.axle().name().toLowerCase(Locale.ROOT);
        values.problem(
                ACTS_ON + ".kind",
                kind,
                "The " + axle + " brakes are " + fitted + ", which this cannot act on.",
                fitting);
        return Optional.empty();
    }
}
