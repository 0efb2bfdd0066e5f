package org.brakewright.kernel.friction;

/**
 * A leading shoe cut free, with the drum's forces on it summed piece by piece for a lining force of sin(angle) per radian.
 *
 * <p>Axes at the drum center: x towards the lining, y from the center towards the pin; the drum drags the lining to the pin.
 *
 * @param inward push of the drum against x
 * @param moment moment about the pin that holds the tip back
 * @param torque moment of the friction about the drum center
 */
record FreeShoe(double inward, double moment, double torque) {
    private static final int PIECES = 4000;

    static FreeShoe of(DrumShoe shoe, double friction) {
        double step = (shoe.toeAngle() - shoe.heelAngle()) / PIECES;
        double inward = 0;
        double moment = 0;
        double torque = 0;
        for (int i = 0; i < PIECES; i++) {
            double angle = shoe.heelAngle() + (i + 0.5) * step;
            double normal = Math.sin(angle) * step;
            double x = shoe.drumRadius() * Math.sin(angle);
            double y = shoe.drumRadius() * Math.cos(angle);
            double forceX = -normal * Math.sin(angle) - friction * normal * Math.cos(angle);
            double forceY = -normal * Math.cos(angle) + friction * normal * Math.sin(angle);
            inward -= forceX;
            moment += x * forceY - (y - shoe.pivotDistance()) * forceX;
            torque += x * friction * normal * Math.sin(angle) + y * friction * normal * Math.cos(angle);
        }
        return new FreeShoe(inward, -moment, torque);
    }
}
