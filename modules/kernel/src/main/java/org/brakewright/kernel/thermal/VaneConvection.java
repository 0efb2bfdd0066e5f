package org.brakewright.kernel.thermal;

/**
 * Air through the passages of a vented disc.
 *
 * <p>R. Limpert, Brake Design and Safety, ch. 3 (from memory): laminar and turbulent duct flow with their entry length, published as
 * changing over at Re = 10,000, where they differ by a factor of two; they are blended from 5,000 to 20,000.
 *
 * @param hydraulicDiameter four times the area of a passage over its wetted edge, m
 * @param length of a passage, m
 */
public record VaneConvection(double hydraulicDiameter, double length) {
    private static final Blend BLEND = new Blend(1e4, 2);

    /** Share of the ideal speed that radial passages let through; an estimate, 0.2 to 0.4. */
    private static final double PUMPING = 0.3;

    public VaneConvection {
        Require.positive("hydraulicDiameter", hydraulicDiameter);
        Require.positive("length", length);
    }

    /** Heat transfer coefficient, W/(m2 K), for a mean air speed in the passage in m/s. */
    public double coefficient(Air air, double channelSpeed) {
        double reynolds = air.reynolds(channelSpeed, hydraulicDiameter);
        return BLEND.between(reynolds, laminar(air, reynolds), turbulent(air, reynolds));
    }

    /** W/(m2 K) of laminar flow. */
    public double laminar(Air air, double reynolds) {
        return 1.865 * Math.cbrt(reynolds * air.prandtl() * hydraulicDiameter / length) * perWall(air);
    }

    /** W/(m2 K) of turbulent flow. */
    public double turbulent(Air air, double reynolds) {
        double entry = 1 + Math.pow(hydraulicDiameter / length, 0.67);
        return 0.023 * entry * Math.pow(reynolds, 0.8) * Math.pow(air.prandtl(), 0.33) * perWall(air);
    }

    /**
     * Mean air speed in the passages, m/s: a share of the speed that the difference of the rims' speeds would give without losses.
     *
     * @param outerDiameter of the passages, m
     * @param innerDiameter of the passages, m
     * @param angularSpeed of the wheel, rad/s
     */
    public static double channelSpeed(double outerDiameter, double innerDiameter, double angularSpeed) {
        Require.that(outerDiameter > innerDiameter, "innerDiameter", innerDiameter, "must be below the outer one");
        double squares = outerDiameter * outerDiameter - innerDiameter * innerDiameter;
        return PUMPING * 0.5 * angularSpeed * Math.sqrt(squares);
    }

    private double perWall(Air air) {
        return air.conductivity() / hydraulicDiameter;
    }
}
