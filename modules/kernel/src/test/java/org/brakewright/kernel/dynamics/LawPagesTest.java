package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void axleLoads() {
        WorkedExample page = WorkedExample.of("axle-loads");
        AxleLoads car = car(page);
        page.holds("front braking", car.front(page.si("deceleration")));
        page.holds("rear braking", car.rear(page.si("deceleration")));
        page.holds("lift-off", car.liftOffDecelerationG());
    }

    @Test
    void idealCurve() {
        WorkedExample page = WorkedExample.of("ideal-curve");
        IdealCurve ideal = new IdealCurve(car(page));
        double decelerationG = page.si("deceleration");
        page.holds("front force", ideal.frontForce(decelerationG));
        page.holds("rear force", ideal.rearForce(decelerationG));
        page.holds("rear force", ideal.rearForceAtFront(ideal.frontForce(decelerationG)));
        page.holds("rear share", ideal.rearForceShare(decelerationG));
        page.holds("rear force is greatest at", ideal.vertexDecelerationG());
    }

    @Test
    void fixedSplit() {
        WorkedExample page = WorkedExample.of("fixed-split");
        AxleLoads car = car(page);
        double share = page.si("rear share of the force");
        page.holds("critical deceleration", FixedSplit.criticalDecelerationG(share, car));
        LockPoint wet = WheelLock.fixedSplit(share, car, page.si("grip of a wet road"));
        LockPoint dry = WheelLock.fixedSplit(share, car, page.si("grip of a dry road"));
        assertThat(wet.first()).isEqualTo(LockPoint.First.FRONT);
        page.holds("front locks first on the wet road at", wet.decelerationG());
        page.holds("efficiency on the wet road", wet.efficiency());
        assertThat(dry.first()).isEqualTo(LockPoint.First.REAR);
        page.holds("rear locks first on the dry road at", dry.decelerationG());
        page.holds("efficiency on the dry road", dry.efficiency());
    }

    @Test
    void adhesion() {
        WorkedExample page = WorkedExample.of("adhesion");
        AxleLoads car = car(page);
        double decelerationG = page.si("deceleration");
        double rear = page.si("rear share of the force") * decelerationG * car.weight();
        double front = decelerationG * car.weight() - rear;
        page.holds("front grip used", Adhesion.front(front, car, decelerationG));
        page.holds("rear grip used", Adhesion.rear(rear, car, decelerationG));
        page.holds("efficiency", Adhesion.efficiency(front, rear, car));
    }

    @Test
    void oneAxleBraked() {
        WorkedExample page = WorkedExample.of("one-axle-braked");
        page.holds("front only", OneAxleBraked.frontOnly(car(page), page.si("grip")));
        page.holds("rear only", OneAxleBraked.rearOnly(car(page), page.si("grip")));
    }

    @Test
    void airForces() {
        WorkedExample page = WorkedExample.of("air-forces");
        AirForces air = new AirForces(
                        page.si("front downforce there"), page.si("rear downforce there"), page.si("drag there"))
                .at(page.si("speed"), page.si("known at"));
        page.holds("front downforce", air.front());
        page.holds("rear downforce", air.rear());
        page.holds("drag", air.drag());
        RoadForces road = new RoadForces(car(page), air, 0, 0);
        double decelerationG = page.si("deceleration");
        page.holds("front braking", road.front(decelerationG));
        page.holds("rear braking", road.rear(decelerationG));
        page.holds("brakes supply", road.brakeForce(decelerationG) / car(page).weight());
        page.holds("critical deceleration", road.criticalDecelerationG(page.si("rear share of the force")));
        page.holds("all wheels at the grip", road.greatestDecelerationG(page.si("grip")));
    }

    @Test
    void engineBraking() {
        WorkedExample page = WorkedExample.of("engine-braking");
        RoadForces road = new RoadForces(car(page), AirForces.NONE, 0, page.si("engine at the rear wheels"));
        page.holds("foot off", road.footOffG());
        double decelerationG = road.decelerationG(page.si("front brakes") + page.si("rear brakes"));
        page.holds("deceleration", decelerationG);
        page.holds("front grip used", page.si("front brakes") / road.front(decelerationG));
        page.holds("rear grip used", (page.si("rear brakes") + road.rearEngine()) / road.rear(decelerationG));
    }

    @Test
    void loadSensitiveGrip() {
        WorkedExample page = WorkedExample.of("load-sensitive-grip");
        LoadSensitiveGrip tires =
                new LoadSensitiveGrip(page.si("grip"), page.si("sensitivity"), page.si("reference load"));
        page.holds("grip there", tires.at(page.si("load")));
        page.holds("force there", tires.force(page.si("load")));
    }

    @Test
    void standingOnGrade() {
        WorkedExample page = WorkedExample.of("standing-on-grade");
        double angle = Math.atan(page.si("grade"));
        StandingOnGrade up = new StandingOnGrade(car(page), angle);
        StandingOnGrade down = new StandingOnGrade(car(page), -angle);
        page.holds("rear load, nose up", up.rear());
        page.holds("rear load, nose down", down.rear());
        page.holds("rear grip needed, nose up", up.rearGripNeeded());
        page.holds("rear grip needed, nose down", down.rearGripNeeded());
    }

    @Test
    void cgHeight() {
        WorkedExample page = WorkedExample.of("cg-height");
        WeighedCar car = new WeighedCar(
                page.si("front level"),
                page.si("rear level"),
                page.si("wheelbase"),
                page.si("front radius"),
                page.si("rear radius"));
        AxleLift lift =
                new AxleLift(AxleLift.Raised.FRONT, page.si("rise of the front"), page.si("rear with front raised"));
        CgHeight found = CgHeight.fromAxleLift(car, lift);
        page.holds("angle turned", found.angle());
        page.holds("height", found.height());
        page.holds("height per newton", found.perLoad());
    }

    @Test
    void stoppingDistance() {
        WorkedExample page = WorkedExample.of("stopping-distance");
        double speed = page.si("speed");
        double deceleration = page.si("deceleration");
        double mass = page.si("mass");
        double quadratic = page.si("quadratic term");
        page.holds("distance", StoppingDistance.distance(speed, deceleration));
        page.holds("time", StoppingDistance.time(speed, deceleration));
        page.holds("energy", StoppingDistance.energy(mass, speed));
        page.holds("power at the start", StoppingDistance.power(mass * deceleration, speed));
        page.holds(
                "distance with late brakes",
                StoppingDistance.distance(speed, deceleration, page.si("dead time"), page.si("build-up time")));
        page.holds("limit", StoppingDistance.regulation(speed * 3.6, quadratic));
        page.holds("deceleration the limit stands for", StoppingDistance.impliedDeceleration(quadratic));
    }

    @Test
    void mfdd() {
        WorkedExample page = WorkedExample.of("mfdd");
        double from = page.si("speed at the start of the span");
        double to = page.si("speed at the end of the span");
        double start = page.si("distance at the start of the span");
        double end = page.si("distance at the end of the span");
        page.holds("deceleration", Mfdd.fromSi(from, to, start, end));
        page.holds("deceleration", Mfdd.fromKmh(from * 3.6, to * 3.6, start, end));
    }

    private static AxleLoads car(WorkedExample page) {
        return new AxleLoads(
                page.si("front at rest"),
                page.si("rear at rest"),
                page.si("wheelbase"),
                page.si("height of the center of gravity"));
    }
}
