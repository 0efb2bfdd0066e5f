package org.brakewright.kernel.dynamics;

/**
 * Height of the center of gravity above the road from a level weighing and one with an axle raised.
 *
 * <p>Exact statics of a rigid body. From the lower wheel centers, the center of gravity lies {@code x} ahead and {@code y} up on level scales;
 * the raised wheel centers lie {@code L} ahead and {@code d = r_high - r_low} up. Turned by the angle a, their horizontal distances are
 * {@code x cos a - y sin a} and {@code L cos a - d sin a}. The scales push straight up under the wheel centers, so with W the weight and H the
 * load left on the raised axle {@code H (L cos a - d sin a) = W (x cos a - y sin a)}. The level weighing gives {@code W x = H0 L}, hence
 * {@code h = r_low + y = r_low + (H/W) d + L (H0 - H)/(W tan a)}. The line of the wheel centers climbs from {@code asin(d/D)} to
 * {@code asin((d + rise)/D)}, {@code D = sqrt(L^2 + d^2)}; the difference is a. For equal wheels this is the usual
 * {@code h = r + L dF/(W tan a)}, {@code sin a = rise/L}.
 *
 * @param height m; outside what a car can have when a weighing was wrong
 * @param angle by which the car was turned, rad
 * @param perLoad change of height per change of the lower axle's raised load, m/N
 */
public record CgHeight(double height, double angle, double perLoad) {
    public CgHeight {
        Require.finite("height", height);
        Require.positive("angle", angle);
        Require.finite("perLoad", perLoad);
    }

    /**
     * The height from the two weighings.
     *
     * @throws IllegalArgumentException when the axle was raised to the upright or the lower axle carries more than the car
     */
    public static CgHeight fromAxleLift(WeighedCar car, AxleLift lift) {
        Require.that(
                lift.lowerAxleLoad() <= car.weight(),
                "lowerAxleLoad",
                lift.lowerAxleLoad(),
                "must not exceed the weight " + car.weight());
        return switch (lift.raised()) {
            case FRONT -> solve(car, lift, car.rearRadius(), car.frontRadius(), car.rear());
            case REAR -> solve(car, lift, car.frontRadius(), car.rearRadius(), car.front());
        };
    }

    private static CgHeight solve(WeighedCar car, AxleLift lift, double low, double high, double lowerLevelLoad) {
        double step = high - low;
        double angle = angle(car.wheelbase(), step, lift.rise());
        double perGain = car.wheelbase() / (car.weight() * Math.tan(angle));
        double gain = lift.lowerAxleLoad() - lowerLevelLoad;
        double left = (car.weight() - lift.lowerAxleLoad()) / car.weight();
        return new CgHeight(low + left * step + gain * perGain, angle, perGain - step / car.weight());
    }

    private static double angle(double wheelbase, double step, double rise) {
        double between = Math.hypot(wheelbase, step);
        Require.that(step + rise < between, "rise", rise, "must be below the distance of the wheel centers");
        return Math.asin((step + rise) / between) - Math.asin(step / between);
    }
}
