package org.brakewright.kernel.gap;

/**
 * A body that turns about an axis.
 *
 * @param body how it stands at angle 0
 * @param pivot a point of the axis, m
 * @param axis direction of the axis, of any length but 0; turning is right-handed about it
 */
public record Swing(ConvexBody body, Point pivot, Point axis) {
    /** Refuses an axis without a direction. */
    public Swing {
        if (!(axis.length() > 0)) {
            throw new IllegalArgumentException("the axis needs a direction");
        }
        axis = axis.times(1 / axis.length());
    }

    /** The body turned by an angle, rad (Rodrigues' formula). */
    public ConvexBody at(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return body.moved(corner -> {
            Point arm = corner.minus(pivot);
            return pivot.plus(arm.times(cos))
                    .plus(axis.cross(arm).times(sin))
                    .plus(axis.times(axis.dot(arm) * (1 - cos)));
        });
    }

    /** Distance from the axis to the farthest corner, m: no point moves faster than this per radian. */
    double reach() {
        return body.corners().stream()
                .mapToDouble(corner -> axis.cross(corner.minus(pivot)).length())
                .max()
                .orElse(0);
    }
}
