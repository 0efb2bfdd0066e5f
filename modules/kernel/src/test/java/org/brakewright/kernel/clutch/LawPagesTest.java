package org.brakewright.kernel.clutch;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.clutch.OverCentreSpring.Action;
import org.brakewright.kernel.hydraulics.Bore;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void bellevilleSpring() {
        WorkedExample page = WorkedExample.of("belleville-spring");
        BellevilleSpring disc = disc(page);
        page.holds("first force", disc.force(page.si("first deflection")));
        page.holds("second force", disc.force(page.si("second deflection")));
        page.holds("third force", disc.force(page.si("third deflection")));
    }

    @Test
    void diaphragmSpring() {
        WorkedExample page = WorkedExample.of("diaphragm-spring");
        DiaphragmSpring spring = diaphragm(page);
        page.holds("first force", spring.force(page.si("first deflection")));
        page.holds("second force", spring.force(page.si("second deflection")));
        page.holds("finger ratio", spring.fingerRatio());
    }

    @Test
    void coverRelease() {
        WorkedExample page = WorkedExample.of("cover-release");
        SprungCover cover = new SprungCover(
                diaphragm(page), page.si("engaged deflection"), page.si("cushion travel"), page.si("finger stiffness"));
        CoverPoint early = cover.at(page.si("early lift"));
        CoverPoint late = cover.at(page.si("late lift"));
        page.holds("clamp force left early", early.clampForce());
        page.holds("bearing force early", early.bearingForce());
        page.holds("bearing travel early", early.bearingTravel());
        page.holds("bearing force late", late.bearingForce());
        page.holds("bearing travel late", late.bearingTravel());
        page.holds("clamp force worn", cover.worn(page.si("wear")).clampForce());
        page.holds("rise of the tips", cover.fingerRise(page.si("wear")));
    }

    @Test
    void forceCurve() {
        WorkedExample page = WorkedExample.of("force-curve");
        ForceCurve curve = new ForceCurve(List.of(point(page, "one"), point(page, "two"), point(page, "three")));
        page.holds("force early", curve.force(page.si("early")));
        page.holds("force in the middle", curve.force(page.si("middle")));
        page.holds("force late", curve.force(page.si("late")));
    }

    @Test
    void hydraulicRelease() {
        WorkedExample page = WorkedExample.of("hydraulic-release");
        double ring =
                HydraulicRelease.ring(page.si("outer diameter of the ring"), page.si("inner diameter of the ring"));
        HydraulicRelease release =
                new HydraulicRelease(Bore.area(page.si("master bore")), ring, 1, page.si("efficiency"));
        double pressure = release.pressure(page.si("force at the bearing"));
        double takenUp = page.si("volume taken up at each MPa") * pressure / 1e6;
        page.holds("area of the ring", ring);
        page.holds("pressure", pressure);
        page.holds("master stroke", release.masterStroke(page.si("travel at the bearing"), takenUp));
        page.holds("travel for the stroke tried", release.bearingTravel(page.si("stroke tried"), takenUp));
    }

    @Test
    void overCentreSpring() {
        WorkedExample page = WorkedExample.of("over-centre-spring");
        OverCentreSpring spring = new OverCentreSpring(
                Action.PUSHES, page.si("rate"), page.si("free length"), page.si("pin"), page.si("anchor"));
        page.holds("length beyond, pushing", spring.length(page.si("beyond")));
        page.holds("moment before, pushing", spring.moment(page.si("before")));
        page.holds("moment beyond, pushing", spring.moment(page.si("beyond")));
    }

    private static ForceCurve.Point point(WorkedExample page, String which) {
        return new ForceCurve.Point(page.si("travel " + which), page.si("force " + which));
    }

    private static DiaphragmSpring diaphragm(WorkedExample page) {
        return new DiaphragmSpring(disc(page), page.si("contact on the plate"), page.si("ring"), page.si("bearing"));
    }

    private static BellevilleSpring disc(WorkedExample page) {
        return new BellevilleSpring(
                page.si("outer radius"),
                page.si("inner radius"),
                page.si("thickness"),
                page.si("cone height"),
                page.si("modulus"),
                page.si("Poisson"));
    }
}
