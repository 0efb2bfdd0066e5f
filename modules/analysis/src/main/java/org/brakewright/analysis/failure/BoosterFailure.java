package org.brakewright.analysis.failure;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.Travel;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.model.resolved.ResolvedBuild;

/** The booster's help lost: the foot alone, as far as pedal and chambers go. */
final class BoosterFailure {
    private final ResolvedBuild build;
    private final Chain unassisted;
    private final TravelModel travel;

    BoosterFailure(ResolvedBuild build, Chain chain, TravelModel travel) {
        this.build = build;
        this.unassisted = chain.unassisted();
        this.travel = travel;
    }

    /** The failure at a push (N) at the pad. */
    Failure at(double push) {
        double usable = UsablePush.of(push, this::beyondEnd);
        ChainState state = unassisted.at(usable);
        LeastDeceleration least = LeastDeceleration.bothAxles(build, state);
        return new Failure(
                What.BOOSTER,
                push,
                state.frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                travel.at(state).padM(),
                0,
                usable < push,
                BarEnd.NONE);
    }

    /** How far (m) a push (N) would take pedal or chambers through their ends; below zero while all have travel left. */
    private double beyondEnd(double push) {
        Travel moved = travel.at(unassisted.at(push));
        double pedal = moved.padM() - build.pedal().travelToStop();
        double front = moved.frontStrokeM() - Strokes.front(build.apply());
        double rear = moved.rearStrokeM() - Strokes.rear(build.apply());
        return Math.max(pedal, Math.max(front, rear));
    }
}
