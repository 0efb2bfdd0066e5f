package org.brakewright.analysis.clutch;

import java.util.Optional;
import org.brakewright.kernel.clutch.OverCentreSpring;
import org.brakewright.model.resolved.ResolvedClutch.PedalSpring;

/** What a spring beside the pedal holds back at the pad. */
@FunctionalInterface
public interface PadSpring {

    /** Force (N) against the foot at a pad travel (m); minus when it helps. */
    double holdsBack(double padTravel);

    /** The spring of a pedal; without one nothing holds back. */
    static PadSpring of(Optional<PedalSpring> spring) {
        return spring.map(PadSpring::of).orElse(padTravel -> 0);
    }

    private static PadSpring of(PedalSpring spring) {
        return switch (spring) {
            case PedalSpring.Return back -> padTravel -> back.force() + back.rate() * padTravel;
            case PedalSpring.OverCentre over -> overCentre(over);
        };
    }

    private static PadSpring overCentre(PedalSpring.OverCentre over) {
        OverCentreSpring.Action action = switch (over.action()) {
            case PULLS -> OverCentreSpring.Action.PULLS;
            case PUSHES -> OverCentreSpring.Action.PUSHES;
        };
        OverCentreSpring law =
                new OverCentreSpring(action, over.rate(), over.freeLength(), over.pinRadius(), over.anchorRadius());
        return padTravel -> -law.moment((padTravel - over.deadCentre()) / over.padArm()) / over.padArm();
    }
}
