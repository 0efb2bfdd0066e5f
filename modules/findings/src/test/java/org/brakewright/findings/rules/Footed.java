package org.brakewright.findings.rules;

import org.brakewright.findings.TestCar;

/**
 * Three hung pedals, invented: pads of 60 mm, a gap of 60 mm from clutch to brake and of 55 mm from brake to throttle. The
 * rules are held to the arithmetic of places.
 */
final class Footed {
    private Footed() {}

    static TestCar car() {
        TestCar car = pedal(TestCar.twin(), "brake", 300);
        car = pedal(car, "clutch", 420).with("footwell.clutch.travel", "130 mm");
        car = pedal(car, "throttle", 185).with("footwell.throttle.travel", "60 mm");
        return car.with("footwell.left_wall", "520 mm")
                .with("footwell.right_wall", "90 mm")
                .with("footwell.driver", "men_5")
                .with("footwell.shoe", "street");
    }

    /** A wall across the brake's way, its near face so far forward, mm. */
    static TestCar wall(double forward) {
        TestCar car = car().with("footwell.obstacles[0].name", "wall")
                .with("footwell.obstacles[0].kind", "box")
                .with("footwell.obstacles[0].near", "fixed");
        car = spot(car, "footwell.obstacles[0].from", forward, 290, 0);
        return spot(car, "footwell.obstacles[0].to", 300, 310, 700);
    }

    private static TestCar pedal(TestCar car, String name, double left) {
        String path = "footwell." + name;
        TestCar with = car.with(path + ".breadth", "60 mm").with(path + ".height", "50 mm");
        return spot(spot(with, path + ".pivot", -200, left, 550), path + ".pad", -200, left, 300);
    }

    static TestCar spot(TestCar car, String path, double forward, double left, double up) {
        return car.with(path + ".forward", forward + " mm")
                .with(path + ".left", left + " mm")
                .with(path + ".up", up + " mm");
    }
}
