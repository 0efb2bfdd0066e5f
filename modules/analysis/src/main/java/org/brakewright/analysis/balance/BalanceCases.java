package org.brakewright.analysis.balance;

import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Works the balance out in every case. */
public final class BalanceCases {
    private BalanceCases() {}

    /** The balance of a build with its chain's curve in every case. */
    public static List<BalanceCase> of(ResolvedBuild build, ChainCurve curve) {
        return Cases.of(build).stream().map(each -> of(build, curve, each)).toList();
    }

    private static BalanceCase of(ResolvedBuild build, ChainCurve curve, Cases.Case each) {
        Balance balance = new Balance(curve, each.situation());
        double from = each.name().judgedFromG(each.greatestG());
        return new BalanceCase(
                each.name(),
                RearFirst.first(balance.rearFirst(), from),
                each.greatestG(),
                each.situation().road().footOffG(),
                balance.lock(build.car().grip()).orElse(null),
                finite(new Lead(curve, each.situation()).least(from, each.greatestG()) - 1),
                orNull(balance.pedalForce(build.aims().hardStopG())));
    }

    private static @Nullable Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
