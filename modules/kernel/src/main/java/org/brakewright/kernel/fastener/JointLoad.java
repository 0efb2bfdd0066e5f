package org.brakewright.kernel.fastener;

/**
 * What a bracket hands to its joint; the joint lies in the x-y plane, z points away from the surface, so a force along
 * z pulls the bracket off.
 *
 * @param at where the force acts, in the plane of the joint
 * @param force N
 * @param moment about axes through that point, N m
 */
public record JointLoad(Point at, Components force, Components moment) {
    /** Along x, y and z. */
    public record Components(double x, double y, double z) {
        public Components {
            Require.that(Double.isFinite(x), "x", x, "must be finite");
            Require.that(Double.isFinite(y), "y", y, "must be finite");
            Require.that(Double.isFinite(z), "z", z, "must be finite");
        }
    }

    /** The same load with its moment taken about another point of the plane. */
    JointLoad about(Point center) {
        Point arm = at.minus(center);
        Components moved = new Components(
                moment.x() + arm.y() * force.z(),
                moment.y() - arm.x() * force.z(),
                moment.z() + arm.x() * force.y() - arm.y() * force.x());
        return new JointLoad(center, force, moved);
    }
}
