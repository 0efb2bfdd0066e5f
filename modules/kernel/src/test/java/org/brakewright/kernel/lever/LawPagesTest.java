package org.brakewright.kernel.lever;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.lever.PedalLinkage.Axis;
import org.brakewright.kernel.lever.PedalLinkage.Point;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void balanceBar() {
        WorkedExample page = WorkedExample.of("balance-bar");
        BalanceBar bar = new BalanceBar(page.si("clevis spacing"), page.si("offset"));
        double front = page.si("front travel");
        double rear = page.si("rear travel");
        page.holds("front share", bar.frontShare());
        page.holds("front push", page.si("push") * bar.frontShare());
        page.holds("rear push", page.si("push") * (1 - bar.frontShare()));
        page.holds("bearing travel", bar.bearingTravel(front, rear));
        page.holds("tilt", bar.tilt(front, rear));
        BarAttitude tilted = new BarAttitude(bar.tilt(front, rear), page.si("set-back of the pins"), 0, 0);
        page.holds("front share with set-back", bar.frontShare(tilted));
    }

    @Test
    void balanceBarFailed() {
        WorkedExample page = WorkedExample.of("balance-bar-failed");
        BalanceBar bar = new BalanceBar(page.si("clevis spacing"), page.si("offset"));
        double live = page.si("live rear travel");
        double largest = page.si("largest tilt");
        FailedBar onStop = bar.failed(BarEnd.FRONT, live, page.si("long front stroke"), largest);
        page.holds("front travel on the tilt stop", onStop.frontTravel());
        page.holds("bearing travel on the tilt stop", onStop.bearingTravel());
        page.holds("live share on the tilt stop", onStop.liveShare());
        FailedBar bottomed = bar.failed(BarEnd.FRONT, live, page.si("short front stroke"), largest);
        page.holds("bearing travel when bottomed", bottomed.bearingTravel());
        page.holds("live share when bottomed", bottomed.liveShare());
    }

    @Test
    void pedalLinkage() {
        WorkedExample page = WorkedExample.of("pedal-linkage");
        PedalLinkage linkage = new PedalLinkage(
                new Point(page.si("pad x"), page.si("pad y")),
                new Point(page.si("pin x"), page.si("pin y")),
                new Axis(new Point(page.si("axis x"), page.si("axis y")), page.si("axis direction")),
                page.si("rod length"));
        LinkagePosition pressed = PedalLinkageTest.position(linkage, page.si("pedal angle"));
        page.holds("ratio at rest", PedalLinkageTest.position(linkage, 0).ratio());
        page.holds("ratio", pressed.ratio());
        page.holds("pad travel", pressed.padTravel());
        page.holds("rod travel", pressed.rodTravel());
        page.holds("lean of the rod", pressed.rodAngle());
        page.holds("side force over thrust", pressed.sideForceShare());
        assertThat(linkage.at(2))
                .isInstanceOfSatisfying(
                        LinkageOutcome.OverCentre.class, over -> page.holds("over-centre angle", over.pedalAngle()));
    }

    @Test
    void threadedRod() {
        WorkedExample page = WorkedExample.of("threaded-rod");
        ThreadedRod rod =
                new ThreadedRod(page.si("pin to end"), page.si("clevis"), page.si("depth"), page.si("diameter"));
        page.holds("engagement", rod.engagement());
        page.holds("cut", rod.cut());
        page.holds("range", rod.range());
        page.holds("thread", rod.thread(page.si("nut"), page.si("pitch")));
    }
}
