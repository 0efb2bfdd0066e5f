package org.brakewright.kernel.fastener;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.fastener.JointLoad.Components;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void boltGroup() {
        WorkedExample page = WorkedExample.of("bolt-group");
        double width = page.si("width");
        double height = page.si("height");
        BoltGroup group = new BoltGroup(
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)));
        List<BoltForce> forces = group.share(new JointLoad(
                new Point(page.si("force acts at x"), page.si("force acts at y")),
                new Components(0, page.si("force y"), page.si("force z")),
                new Components(page.si("moment x"), 0, 0)));
        page.holds("shear, lower left", forces.get(0).shear());
        page.holds("shear, upper right", forces.get(2).shear());
        page.holds("tension, lower left", forces.get(0).tension());
        page.holds("tension, lower right", forces.get(1).tension());
        page.holds("tension, upper right", forces.get(2).tension());
        page.holds("tension, upper left", forces.get(3).tension());
    }

    @Test
    void boltJoint() {
        WorkedExample page = WorkedExample.of("bolt-joint");
        ScrewThread thread = ScrewThread.metric(page.si("diameter"), page.si("pitch"));
        Preload preload = Preload.ofProof(thread, page.si("proof stress"), page.si("share of proof"));
        double grip = page.si("grip");
        double young = page.si("Young's modulus");
        page.holds("stress area", thread.stressArea());
        page.holds("preload", preload.force());
        page.holds("torque", preload.torque(page.si("nut factor")));
        page.holds("stretch", preload.stretch(grip, young));
        page.holds("turn of the nut", preload.turn(grip, young));
        double share = new Grip(thread, grip, young, young).boltShare();
        page.holds("share that the bolt feels", share);
        page.holds("pull that opens the joint", preload.opens(share));
        page.holds("bolt under pull", preload.underPull(page.si("pull"), share));
        Prying prying = new Prying(page.si("root to bolt"), page.si("bolt to edge"));
        page.holds("prised bolt", prying.boltTension(page.si("pull on the flange")));
        page.holds("moment in the flange", prying.flangeMoment(page.si("pull on the flange")));
    }

    @Test
    void boltStrength() {
        WorkedExample page = WorkedExample.of("bolt-strength");
        ScrewThread thread = ScrewThread.metric(page.si("diameter"), page.si("pitch"));
        BoltStress stress = new BoltStress(thread, page.si("tension"), page.si("shear"));
        page.holds("tensile stress", stress.tensile());
        page.holds("shear stress", stress.shearing());
        page.holds("equivalent stress", stress.equivalent());
        BoltHole hole = new BoltHole(thread.diameter(), page.si("hole"), page.si("sheet"), page.si("centre to edge"));
        page.holds("bearing stress", hole.bearing(page.si("shear")));
        page.holds("stress along the tear", hole.tearOut(page.si("shear")));
        ThreadFit fit = ThreadFit.of(thread);
        double engagement = page.si("engagement");
        double block = page.si("shear strength of the block");
        BoltGrade grade = BoltGrade.CLASS_8_8;
        page.holds("shear area of the screw's thread", fit.screwArea(engagement));
        page.holds("shear area of the block's thread", fit.nutArea(engagement));
        page.holds("pull that strips", fit.strips(engagement, grade.shearStrength(), block));
        double breaks = grade.tensileStrength() * thread.stressArea();
        page.holds("engagement that breaks the bolt first", fit.engagementFor(breaks, grade.shearStrength(), block));
    }

    @Test
    void weldGroup() {
        WorkedExample page = WorkedExample.of("weld-group");
        double legs = page.si("legs");
        double heel = page.si("heel");
        Point low = new Point(0, 0);
        Point high = new Point(0, heel);
        WeldGroup group = new WeldGroup(
                List.of(
                        new WeldLine(low, new Point(legs, 0)),
                        new WeldLine(low, high),
                        new WeldLine(high, new Point(legs, heel))),
                page.si("leg of the fillet"));
        page.holds("length", group.length());
        page.holds("unit polar second moment", group.unitPolar());
        JointLoad load = new JointLoad(
                new Point(page.si("force acts at x"), page.si("force acts at y")),
                new Components(0, page.si("force y"), 0),
                new Components(0, page.si("moment y"), 0));
        page.holds("greatest stress", group.greatestStress(load));
    }
}
