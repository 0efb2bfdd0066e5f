package org.brakewright.analysis.clutch;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.hydraulics.LineVolume;
import org.brakewright.analysis.pedal.Lever;
import org.brakewright.analysis.pedal.LeverState;
import org.brakewright.kernel.clutch.CoverPoint;
import org.brakewright.kernel.clutch.HydraulicRelease;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedPedal;

/**
 * From the release bearing back to the foot, plate new or worn: the bearing's place gives the force of the cover, that
 * the pressure, that what line and fork take up, and all of it the stroke of the master and the pedal. Nothing has to be
 * searched for; only a place for a given pedal travel is.
 *
 * @param clutch as resolved
 * @param cover over that plate
 * @param gap between bearing and fingers at rest, m
 * @param law of the hydraulics
 * @param line what it takes up
 * @param lever the pedal
 * @param spring at the pedal
 */
public record ReleaseChain(
        ResolvedClutch clutch,
        ReleaseCover cover,
        double gap,
        HydraulicRelease law,
        LineVolume line,
        Lever lever,
        PadSpring spring) {
    private static final int PIECES = 32;

    /** The release over a plate whose facings have worn by a thickness (m). */
    public static ReleaseChain of(ResolvedClutch clutch, double wear) {
        ReleaseCover cover = ReleaseCover.of(clutch.cover(), clutch.plate(), wear);
        ResolvedClutch.Slave slave = clutch.slave();
        return new ReleaseChain(
                clutch,
                cover,
                Math.max(0, clutch.rest().gap() - cover.fingerRatio() * wear),
                new HydraulicRelease(clutch.master().area(), slave.area(), slave.forkRatio(), slave.efficiency()),
                new LineVolume(clutch.line()),
                Lever.of(clutch.pedal()),
                PadSpring.of(clutch.pedalSpring()));
    }

    /** The release when the bearing has gone a way (m, not negative) from rest. */
    ReleaseState at(double bearingWay) {
        CoverPoint there = cover.at(bearingWay - gap);
        double pressure = law.pressure(there.bearingForce());
        double followed = bearingWay + there.bearingForce() * clutch.slave().forkGive();
        double stroke = clutch.master().lostStroke() + law.masterStroke(followed, line.total(pressure));
        return state(bearingWay, there, stroke);
    }

    /** The pedal just as its piston begins to move. */
    ReleaseState start() {
        return state(0, cover.at(0), 0);
    }

    /** The release with the pad at a travel (m) that is not less than where the bearing begins to move. */
    ReleaseState atPad(double padTravel) {
        double most = clutch.master().area() * clutch.master().stroke() * 2 / (law.slaveArea() * law.forkRatio());
        double way = Crossing.between(tried -> at(tried).padTravel() - padTravel, 0, most)
                .orElse(at(0).padTravel() >= padTravel ? 0 : most);
        return at(way);
    }

    /** The release as far as pedal stop or master let it go. */
    public ReleaseState end() {
        ReleaseState atStop = atPad(clutch.pedal().travelToStop());
        Master master = clutch.master();
        if (atStop.masterStroke() <= master.stroke()) {
            return atStop;
        }
        double way = Crossing.between(tried -> at(tried).masterStroke() - master.stroke(), 0, atStop.bearingWay())
                .orElse(0);
        return at(way);
    }

    /** The release at even places of the bearing's way, from the pedal's first movement to its end. */
    public List<ReleaseState> way() {
        double end = end().bearingWay();
        List<ReleaseState> way = new ArrayList<>();
        way.add(start());
        for (int i = 0; i <= PIECES; i++) {
            way.add(at(end * i / PIECES));
        }
        return way;
    }

    /** How far (m) the slave lets the bearing go; one in contact is pushed back by wear and has so much further to go. */
    public double ahead(double wear) {
        ResolvedClutch.Rest rest = clutch.rest();
        return rest.contact() ? rest.ahead() + Math.min(rest.behind(), cover.fingerRatio() * wear) : rest.ahead();
    }

    private ReleaseState state(double bearingWay, CoverPoint there, double stroke) {
        ResolvedPedal pedal = clutch.pedal();
        Master master = clutch.master();
        double pressure = law.pressure(there.bearingForce());
        double home = master.springForce() + master.springRate() * stroke;
        LeverState at = lever.at(pedal.slack() + stroke);
        double arm = pedal.freePlay() + at.padTravel();
        double push = (pressure * master.area() + home + master.sealFriction()) / (at.ratio() * pedal.efficiency());
        double kept = law.efficiency() * law.efficiency() * pressure * master.area();
        double back = (kept + home - master.sealFriction()) * pedal.efficiency() / at.ratio();
        double give = push * (1 / pedal.mountStiffness() + 1 / pedal.armStiffness());
        double held = spring.holdsBack(arm);
        return new ReleaseState(bearingWay, there, pressure, stroke, arm, arm + give, push + held, back + held);
    }
}
