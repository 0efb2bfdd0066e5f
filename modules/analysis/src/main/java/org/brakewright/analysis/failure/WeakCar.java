package org.brakewright.analysis.failure;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;

/** A car with something failed or weak. */
interface WeakCar {

    /** From the foot to what is left of the brakes. */
    Chain chain();

    /** What the car holds in its worst load case under a push. */
    LeastDeceleration least(Pushed pushed);

    /** The failure at a push (N) at the pad. */
    Failure at(double push);
}
