package org.brakewright.kernel.tubing;

import java.util.Comparator;
import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.tubing.CutPlan.Bar;
import org.brakewright.kernel.tubing.RightAngleBend.Metal;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void bendTable() {
        WorkedExample page = WorkedExample.of("bend-table");
        BendTable table = BendTable.of(leftThenUp(page));
        page.holds("first straight", table.straights().getFirst());
        page.holds("second straight", table.straights().get(1));
        page.holds("rotation", table.bends().getLast().rotation());
        page.holds("second angle", table.bends().getLast().arc().angle());
        page.holds("tail", table.tail());
        page.holds("developed length", table.developedLength());
        EndAllowance end = new EndAllowance(page.si("flare takes up"), 0);
        page.holds("cut length, two flares", EndAllowance.cutLength(table, end, end));
        BenderTool tool = new BenderTool(
                page.si("grip before the first bend"),
                page.si("straight between bends"),
                page.si("grip after the last bend"));
        page.holds("spare between the bends", tool.spare(table).get(1));
    }

    @Test
    void lineClearance() {
        WorkedExample page = WorkedExample.of("line-clearance");
        double half = page.si("length of the tube") / 2;
        CentreLine tube = new CentreLine(List.of(new Point(-half, 0, 0), new Point(half, 0, 0)));
        double apart = page.si("way between both axes");
        CentreLine.Nearest nearest = tube.nearest(new Envelope.Cylinder(
                new Point(0, apart, -1), new Point(0, apart, 1), page.si("radius of the cylinder")));
        page.holds("smallest distance of the middle", nearest.distance());
        page.holds("place along the tube", nearest.along());
    }

    @Test
    void springback() {
        WorkedExample page = WorkedExample.of("springback");
        Springback metal = new Springback(page.si("thickness"), page.si("yield"), page.si("Young's modulus"));
        double tool = page.si("radius on the tool");
        page.holds("radius after it lets go", metal.sprungRadius(tool));
        page.holds("angle kept", metal.angleKept(tool));
        page.holds("bend to", metal.bendTo(page.si("wanted angle"), tool));
        page.holds("radius of the tool for the wanted radius", metal.toolRadius(page.si("wanted radius")));
    }

    @Test
    void sheetBend() {
        WorkedExample page = WorkedExample.of("sheet-bend");
        SheetBend bend = new SheetBend(page.si("inside radius"), page.si("thickness"), page.si("K-factor"));
        page.holds("allowance", bend.allowance(page.si("angle")));
        page.holds("deduction", bend.deduction(page.si("angle")));
    }

    @Test
    void mitreCut() {
        WorkedExample page = WorkedExample.of("mitre-cut");
        MitreCut cut = new MitreCut(page.si("outside diameter"), page.si("cut"));
        page.holds("depth", cut.depth());
        page.holds("edge", cut.edge(page.si("around")));
    }

    @Test
    void saddleCut() {
        WorkedExample page = WorkedExample.of("saddle-cut");
        SaddleCut cut = new SaddleCut(
                page.si("branch diameter"), page.si("main diameter"), page.si("angle"), page.si("offset"));
        page.holds("edge at the leaning side", cut.edge(0));
        page.holds("edge", cut.edge(page.si("around")));
        page.holds("across", page.si("branch diameter") / 2 * page.si("around"));
    }

    @Test
    void rightAngleBend() {
        WorkedExample page = WorkedExample.of("right-angle-bend");
        Metal metal = new Metal(page.si("yield"), page.si("hardening"), page.si("Young's modulus"));
        RightAngleBend bend = new RightAngleBend(page.si("thickness"), page.si("radius of the punch"), metal);
        page.holds("least radius", RightAngleBend.leastRadius(page.si("thickness"), page.si("fracture strain")));
        page.holds("force", bend.force(page.si("width"), page.si("arm"), page.si("friction")));
        page.holds("angle of the punch", bend.punchAngle());
        page.holds("stock", bend.stock(page.si("leg")));
    }

    @Test
    void cutList() {
        WorkedExample page = WorkedExample.of("cut-list");
        double longer = page.si("long piece");
        double shorter = page.si("short piece");
        CutPlan plan = new CutList(
                        List.of(longer, shorter, longer, shorter),
                        List.of(page.si("long stock"), page.si("short stock")),
                        page.si("kerf"))
                .plan();
        List<Bar> bars = plan.bars().stream()
                .sorted(Comparator.comparingDouble(Bar::stock))
                .toList();
        page.holds("bought for two long and two short pieces", plan.stock());
        page.holds("left of the short stock", bars.getFirst().left());
        page.holds("left of the long stock", bars.getLast().left());
    }

    private static Route leftThenUp(WorkedExample page) {
        double angle = page.si("first angle");
        Point corner = new Point(page.si("first leg"), 0, 0);
        Point second = corner.plus(new Point(Math.cos(angle), Math.sin(angle), 0).times(page.si("second leg")));
        Point end = second.plus(new Point(0, 0, page.si("third leg")));
        double radius = page.si("radius");
        return new Route(List.of(new Point(0, 0, 0), corner, second, end), List.of(radius, radius));
    }

    @Test
    void foldedStrip() {
        WorkedExample page = WorkedExample.of("folded-strip");
        SheetBend bend = new SheetBend(page.si("inside radius"), page.si("thickness"), page.si("K-factor"));
        double leg = page.si("leg");
        FoldedStrip channel =
                new FoldedStrip(List.of(leg, page.si("web"), leg), List.of(Math.PI / 2, Math.PI / 2), bend);
        page.holds("set-back", leg - channel.flats().getFirst());
        page.holds("flat of a leg", channel.flats().getFirst());
        page.holds("flat of the web", channel.flats().get(1));
        page.holds("length", channel.length());
        page.holds("place of the hole", channel.place(1, page.si("hole in the web")));
    }
}
