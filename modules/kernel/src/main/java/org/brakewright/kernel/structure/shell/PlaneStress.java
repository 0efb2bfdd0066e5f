package org.brakewright.kernel.structure.shell;

/**
 * Stress in the plane of a sheet, in the triangle's axes: x along the side from the first corner to the second, y in
 * the plane towards the third.
 *
 * @param x direct stress, tension positive, Pa
 * @param y direct stress, tension positive, Pa
 * @param shear Pa
 */
public record PlaneStress(double x, double y, double shear) {
    public PlaneStress plus(PlaneStress other) {
        return new PlaneStress(x + other.x, y + other.y, shear + other.shear);
    }

    public PlaneStress minus(PlaneStress other) {
        return new PlaneStress(x - other.x, y - other.y, shear - other.shear);
    }

    /** Pa. */
    public double vonMises() {
        return Math.sqrt(Math.max(0, x * x - x * y + y * y + 3 * shear * shear));
    }

    /** The greater principal stress, Pa. */
    public double greatestPrincipal() {
        return (x + y) / 2 + Math.hypot((x - y) / 2, shear);
    }

    /** The lesser principal stress, Pa. */
    public double leastPrincipal() {
        return (x + y) / 2 - Math.hypot((x - y) / 2, shear);
    }
}
