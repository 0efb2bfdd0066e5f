package org.brakewright.kernel.structure;

/**
 * A force and a moment at a point.
 *
 * @param force N
 * @param moment N m
 */
public record Wrench(Vector3 force, Vector3 moment) {
    public static final Wrench NONE = new Wrench(Vector3.ZERO, Vector3.ZERO);

    public static Wrench ofForce(Vector3 force) {
        return new Wrench(force, Vector3.ZERO);
    }

    static Wrench at(double[] forces, int start) {
        return new Wrench(
                new Vector3(forces[start], forces[start + 1], forces[start + 2]),
                new Vector3(forces[start + 3], forces[start + 4], forces[start + 5]));
    }

    void addTo(double[] forces, int start) {
        forces[start] += force.x();
        forces[start + 1] += force.y();
        forces[start + 2] += force.z();
        forces[start + 3] += moment.x();
        forces[start + 4] += moment.y();
        forces[start + 5] += moment.z();
    }
}
