package org.brakewright.analysis.clutch;

import java.util.List;
import org.brakewright.analysis.clutch.PlateState.CurvePoint;
import org.brakewright.model.resolved.ResolvedClutch;

/** Follows the release over one plate. */
final class PlateStates {
    private PlateStates() {}

    static PlateState of(ReleaseChain chain, double wear) {
        ResolvedClutch clutch = chain.clutch();
        ReleaseCover cover = chain.cover();
        double needed = cover.needed(clutch.cover(), clutch.plate());
        ReleaseState end = chain.end();
        List<ReleaseState> way = chain.way();
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
                chain.ahead(wear) - end.bearingWay(),
                way.stream().mapToDouble(ReleaseState::effort).max().orElseThrow(),
                free.effort(),
                way.stream().mapToDouble(ReleaseState::returnForce).min().orElseThrow(),
                cover.beyondData(onFingers),
                way.stream().map(at -> point(chain, at)).toList());
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
