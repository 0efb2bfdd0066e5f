package org.brakewright.kernel.gap;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from geometry by hand. */
class LawPagesTest {
    @Test
    void nearestPoints() {
        WorkedExample page = WorkedExample.of("nearest-points");
        ConvexBody column = new ConvexBody(
                List.of(new Point(0, 0, 0), new Point(page.si("column forward"), 0, page.si("column up"))),
                page.si("column radius"));
        Point at = new Point(page.si("ball forward"), page.si("ball left"), page.si("ball up"));
        ConvexBody ball = new ConvexBody(List.of(at), page.si("ball radius"));
        page.holds("clearance", NearestPoints.between(column, ball).clearance());
    }

    @Test
    void sweptGap() {
        WorkedExample page = WorkedExample.of("swept-gap");
        ConvexBody ball = new ConvexBody(List.of(new Point(0, 0, -page.si("arm"))), page.si("ball radius"));
        Swing forward = new Swing(ball, new Point(0, 0, 0), new Point(0, -1, 0));
        double far = page.si("other from the axis");
        double angle = page.si("other at angle");
        Point at = new Point(far * Math.sin(angle), page.si("other to the left"), -far * Math.cos(angle));
        ConvexBody other = new ConvexBody(List.of(at), page.si("other radius"));
        SweptGap swept = SweptGap.of(forward, other, 0, page.si("swing"), 1e-8);
        page.holds("smallest gap", swept.gap().clearance());
    }
}
