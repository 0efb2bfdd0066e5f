package org.brakewright.analysis.balance;

import java.util.Optional;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Stance;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Solves a car again with a longer front rod and with the adjuster turned: does rod length set the balance? */
final class RodLengthEffects {
    private static final double LONGER = 1e-3;

    private final ResolvedBuild build;
    private final ResolvedApply.Twin twin;
    private final Pushed now;

    RodLengthEffects(ResolvedBuild build, ResolvedApply.Twin twin, Pushed now) {
        this.build = build;
        this.twin = twin;
        this.now = now;
    }

    /** The effect; null when one of the two cars cannot make the same stop. */
    @Nullable
    RodLengthEffect effect() {
        Optional<Pushed> longer = solved(withRestLead(twin.bar()));
        Optional<Pushed> turned = solved(turned(twin.bar()));
        if (longer.isEmpty() || turned.isEmpty()) {
            return null;
        }
        return new RodLengthEffect(
                LONGER,
                longer.get().apply().bar().tilt() - now.apply().bar().tilt(),
                share(longer.get()) - share(now),
                share(turned.get()) - share(now));
    }

    private Optional<Pushed> solved(Bar bar) {
        ResolvedApply apply = new ResolvedApply.Twin(twin.front(), twin.rear(), bar, twin.valves());
        ResolvedBuild changed = new ResolvedBuild(
                build.name(),
                build.car(),
                build.front(),
                build.rear(),
                build.pedal(),
                apply,
                build.frontCircuit(),
                build.rearCircuit(),
                build.aims(),
                build.use(),
                build.ruleSets(),
                build.checks(),
                build.parking(),
                build.heat(),
                build.clutch());
        return ChainCurve.of(Chain.of(changed))
                .reach(ChainState::totalForce, now.state().totalForce());
    }

    private static Bar withRestLead(Bar bar) {
        Stance stance = bar.stance();
        return changed(
                bar,
                bar.offset(),
                new Stance(
                        stance.pinSetBack(), stance.restLead() + LONGER, stance.rodLength(), stance.masterSpacing()));
    }

    /** Turned toward the front; held short of the clevis on a bar that ends there. */
    private static Bar turned(Bar bar) {
        double most = 0.499 * bar.clevisSpacing();
        return changed(bar, Math.min(most, bar.offset() + bar.movementPerTurn()), bar.stance());
    }

    private static Bar changed(Bar bar, double offset, Stance stance) {
        return new Bar(
                bar.clevisSpacing(),
                offset,
                bar.movementPerTurn(),
                bar.offsetLimit(),
                bar.tiltLimit(),
                stance,
                bar.sideFloat(),
                bar.lockedForRoad());
    }

    private static double share(Pushed pushed) {
        return pushed.state().frontForce() / pushed.state().totalForce();
    }
}
