package org.brakewright.analysis.clutch;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.clutch.PlateState.CurvePoint;
import org.brakewright.model.resolved.ResolvedClutch;

/** Follows the release over one plate. */
final class PlateStates {
    private static final int PIECES = 32;

    private PlateStates() {}

    static PlateState of(ReleaseChain chain, double wear) {
        ResolvedClutch clutch = chain.clutch();
        ReleaseCover cover = chain.cover();
        double needed = cover.needed(clutch.cover(), clutch.plate());
        ReleaseState end = chain.end();
        List<ReleaseState> way = way(chain, end);
        ReleaseState free = chain.at(chain.gap() + needed);
        double onFingers = Math.max(0, end.bearingWay() - chain.gap());
        return new PlateState(
                wear,
                cover.clampForce(),
                chain.gap(),
                needed,
                chain.at(chain.gap() + cover.liftOff()).padTravel(),
                free.padTravel(),
                onFingers,
                ahead(clutch, cover, wear) - end.bearingWay(),
                way.stream().mapToDouble(ReleaseState::effort).max().orElseThrow(),
                free.effort(),
                way.stream().mapToDouble(ReleaseState::returnForce).min().orElseThrow(),
                cover.beyondData(onFingers),
                way.stream().map(at -> point(chain, at)).toList());
    }

    /** A bearing in contact is pushed back by wear and has so much further to go; one that stands off is not. */
    static double ahead(ResolvedClutch clutch, ReleaseCover cover, double wear) {
        ResolvedClutch.Rest rest = clutch.rest();
        return rest.contact() ? rest.ahead() + Math.min(rest.behind(), cover.fingerRatio() * wear) : rest.ahead();
    }

    private static List<ReleaseState> way(ReleaseChain chain, ReleaseState end) {
        List<ReleaseState> way = new ArrayList<>();
        way.add(chain.start());
        for (int i = 0; i <= PIECES; i++) {
            way.add(chain.at(end.bearingWay() * i / PIECES));
        }
        return way;
    }

    private static CurvePoint point(ReleaseChain chain, ReleaseState at) {
        return new CurvePoint(
                at.padTravel(),
                at.effort(),
                Math.max(0, at.bearingWay() - chain.gap()),
                at.pressurePa(),
                at.cover().clampForce());
    }
}
