package org.brakewright.findings.rules;

import org.brakewright.findings.TestCar;

/**
 * A front line that can be worked out by hand: 200 mm forward from the master at a height of 500 mm, 200 mm down, 250 mm
 * forward to the caliper, bent at 15 mm.
 */
final class Plumbed {
    static final String TUBE = "plumbing.tubes[0].";
    static final String NAME = "front tube";

    /** Straights of 185, 170 and 235 mm and two quarters of a circle, mm. */
    static final double DEVELOPED = 185 + 170 + 235 + 15 * Math.PI;

    private Plumbed() {}

    static TestCar car() {
        TestCar car = TestCar.twin()
                .with("plumbing.bender.radius", "15 mm")
                .with("plumbing.stock_lengths[0]", "7 m")
                .with(TUBE + "name", NAME)
                .with(TUBE + "material", "steel")
                .with(TUBE + "outside_diameter", "3/16 in")
                .with(TUBE + "wall", "0.7 mm");
        car = part(car, 0, "front master", "master", "0 mm", "500 mm").with("plumbing.parts[0].circuit", "front");
        car = part(car, 1, "caliper", "caliper", "450 mm", "300 mm").with("plumbing.parts[1].bleeder", "yes");
        car = end(end(car, "start", "front master"), "end", "caliper");
        car = point(car, 0, "0 mm", "500 mm");
        car = point(car, 1, "200 mm", "500 mm");
        car = point(car, 2, "200 mm", "300 mm");
        return point(car, 3, "450 mm", "300 mm");
    }

    /** A ball below the middle of the last leg, its middle 120 mm away. */
    static TestCar ball(TestCar car, String near, String radius) {
        String ball = "plumbing.obstacles[0].";
        return car.with(ball + "name", "ball")
                .with(ball + "kind", "sphere")
                .with(ball + "near", near)
                .with(ball + "at.forward", "325 mm")
                .with(ball + "at.left", "300 mm")
                .with(ball + "at.up", "180 mm")
                .with(ball + "radius", radius);
    }

    private static TestCar part(TestCar car, int index, String name, String kind, String forward, String up) {
        String path = "plumbing.parts[" + index + "].";
        return car.with(path + "name", name)
                .with(path + "kind", kind)
                .with(path + "at.forward", forward)
                .with(path + "at.left", "300 mm")
                .with(path + "at.up", up);
    }

    private static TestCar end(TestCar car, String which, String part) {
        String path = TUBE + which + ".";
        return car.with(path + "to", part)
                .with(path + "form", "double_45")
                .with(path + "nut", "unf_3_8_24")
                .with(path + "seat", "inverted_45")
                .with(path + "port_thread", "unf_3_8_24");
    }

    static TestCar point(TestCar car, int index, String forward, String up) {
        String path = TUBE + "points[" + index + "].";
        return car.with(path + "forward", forward).with(path + "left", "300 mm").with(path + "up", up);
    }
}
