package org.brakewright.analysis.ledger;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.clutch.ClutchStates;
import org.brakewright.analysis.failure.Failures;
import org.brakewright.analysis.heat.HeatStates;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.HardStops;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoints;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** The headline of a build without all the rest, for moving one value after the other; brakes, clutch and heat apart. */
final class Headlines {
    private Headlines() {}

    /** The brakes' part. */
    static Headline of(ResolvedBuild build) {
        Chain chain = Chain.of(build);
        ChainCurve curve = ChainCurve.of(chain);
        HardStop stop = HardStops.of(build, new OperatingPoints(build, curve), point -> List.of());
        Stream<@Nullable Double> critical = build.car().loadCases().stream()
                .map(loadCase -> new Balance(curve, Loads.of(build.car(), loadCase)))
                .map(balance -> RearFirst.critical(balance.rearFirst()));
        return Headline.of(stop, critical, Failures.of(build, chain));
    }

    /** The heat's part. */
    static @Nullable HeatHeadline heat(ResolvedBuild build) {
        ChainCurve curve = ChainCurve.of(Chain.of(build));
        HardStop stop = HardStops.of(build, new OperatingPoints(build, curve), point -> List.of());
        return HeatHeadline.of(HeatStates.peaks(build, curve, stop));
    }

    /** The clutch's part. */
    static @Nullable ClutchHeadline clutch(ResolvedBuild build) {
        return ClutchHeadline.of(ClutchStates.of(build.clutch()));
    }
}
