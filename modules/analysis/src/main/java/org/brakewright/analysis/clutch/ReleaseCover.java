package org.brakewright.analysis.clutch;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.kernel.clutch.BellevilleSpring;
import org.brakewright.kernel.clutch.CoverPoint;
import org.brakewright.kernel.clutch.DiaphragmSpring;
import org.brakewright.kernel.clutch.ForceCurve;
import org.brakewright.kernel.clutch.SprungCover;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedClutch.Cover;
import org.brakewright.model.resolved.ResolvedClutch.Plate;
import org.brakewright.model.resolved.ResolvedClutch.Spring;

/** A clutch cover as the release bearing feels it. */
public sealed interface ReleaseCover {

    /** The cover when the bearing has gone a travel (m) since it touched the fingers; nothing before. */
    CoverPoint at(double bearingTravel);

    /** Clamp force (N) with the clutch engaged. */
    double clampForce();

    /** Bearing travel (m) at which no clamp force is left. */
    double liftOff();

    /** Finger travel over lift of the plate. */
    double fingerRatio();

    /** Whether a travel (m) lies beyond what is known of the cover. */
    boolean beyondData(double bearingTravel);

    /** Clamp force (N) that the force at the bearing implies. */
    double impliedClamp();

    /** Bearing travel (m) that frees the plate: as the cover says, else lift-off and the clear gap times the finger ratio. */
    default double needed(Cover cover, Plate plate) {
        return cover.releaseTravel().orElse(liftOff() + fingerRatio() * plate.clearance());
    }

    /** The cover over a plate whose facings have worn by a thickness (m). */
    static ReleaseCover of(Cover cover, Plate plate, double wear) {
        return switch (cover.spring()) {
            case Spring.Dimensions dimensions -> new BySpring(law(dimensions).worn(wear));
            case Spring.Points points -> ByPoints.of(points, cover.clampLoad());
            case Spring.Load load -> ByPoints.of(load, cover, plate);
        };
    }

    private static SprungCover law(Spring.Dimensions dimensions) {
        Spring.Rim rim = dimensions.rim();
        DiaphragmSpring spring = new DiaphragmSpring(
                new BellevilleSpring(
                        rim.outerRadius(),
                        rim.innerRadius(),
                        rim.thickness(),
                        rim.coneHeight(),
                        rim.modulus(),
                        BySpring.POISSON_RATIO),
                dimensions.pressRadius(),
                dimensions.fulcrumRadius(),
                dimensions.bearingRadius());
        return new SprungCover(
                spring, dimensions.engagedDeflection(), dimensions.cushionTravel(), dimensions.fingerStiffness());
    }

    /**
     * A cover whose spring was measured.
     *
     * @param law of its spring, plate as worn as it is
     */
    record BySpring(SprungCover law) implements ReleaseCover {
        private static final double POISSON_RATIO = 0.3;

        @Override
        public CoverPoint at(double bearingTravel) {
            if (bearingTravel <= 0) {
                return law.at(0);
            }
            double most = bearingTravel / fingerRatio();
            double lift = Crossing.between(tried -> law.at(tried).bearingTravel() - bearingTravel, 0, most)
                    .orElse(most);
            return law.at(lift);
        }

        @Override
        public double clampForce() {
            return law.clampForce();
        }

        @Override
        public double liftOff() {
            return law.at(law.cushionTravel()).bearingTravel();
        }

        @Override
        public double impliedClamp() {
            return fingerRatio() * at(liftOff()).bearingForce();
        }

        @Override
        public double fingerRatio() {
            return law.spring().fingerRatio();
        }

        @Override
        public boolean beyondData(double bearingTravel) {
            return false;
        }
    }

    /**
     * A cover of which the force at the bearing is known; worn it is taken to be as new.
     *
     * @param curve of that force
     * @param fingerRatio finger travel over lift
     * @param clampForce engaged, N
     * @param liftOff bearing travel at which it is gone, m
     */
    record ByPoints(ForceCurve curve, double fingerRatio, double clampForce, double liftOff) implements ReleaseCover {
        /** A level force is known as far as any bearing goes. */
        private static final double FAR = 0.1;

        private static final double LEAST_SHARE = 0.3;

        static ByPoints of(Spring.Points points, OptionalDouble clampLoad) {
            ForceCurve curve = new ForceCurve(points.points().stream()
                    .map(point -> new ForceCurve.Point(point.travel(), point.force()))
                    .toList());
            ForceCurve.Point peak = peak(curve);
            double there = clampLoad.isEmpty()
                    ? peak.travel()
                    : Crossing.between(
                                    tried -> points.fingerRatio() * curve.force(tried) - clampLoad.getAsDouble(),
                                    0,
                                    peak.travel())
                            .orElse(peak.travel());
            double clamp = clampLoad.orElse(points.fingerRatio() * peak.force());
            return new ByPoints(curve, points.fingerRatio(), clamp, there);
        }

        static ByPoints of(Spring.Load load, Cover cover, Plate plate) {
            double needed = cover.releaseTravel().orElseThrow();
            double liftOff = Math.max(LEAST_SHARE * needed, needed - load.fingerRatio() * plate.clearance());
            ForceCurve curve = new ForceCurve(List.of(
                    new ForceCurve.Point(liftOff, load.releaseLoad()),
                    new ForceCurve.Point(liftOff + FAR, load.releaseLoad())));
            double clamp = cover.clampLoad().orElse(load.fingerRatio() * load.releaseLoad());
            return new ByPoints(curve, load.fingerRatio(), clamp, liftOff);
        }

        @Override
        public CoverPoint at(double bearingTravel) {
            double travel = Math.max(0, bearingTravel);
            double force = curve.force(travel);
            double left = travel >= liftOff ? 0 : clampForce * Math.max(0, 1 - force / curve.force(liftOff));
            return new CoverPoint(Math.max(0, travel - liftOff) / fingerRatio, travel, force, left);
        }

        /** The greatest force is that of lift-off, and all of it is clamp force. */
        @Override
        public double impliedClamp() {
            return fingerRatio * peak(curve).force();
        }

        @Override
        public boolean beyondData(double bearingTravel) {
            return curve.beyondData(bearingTravel);
        }

        private static ForceCurve.Point peak(ForceCurve curve) {
            return curve.points().stream()
                    .max(Comparator.comparingDouble(ForceCurve.Point::force))
                    .orElseThrow();
        }
    }
}
