package org.brakewright.analysis.mount;

import org.brakewright.kernel.mesh.Spot;
import org.brakewright.kernel.structure.Axes;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.resolved.ResolvedMount;

/**
 * The panel's plane in the car.
 *
 * @param normal toward the nose of the car
 * @param left along the panel
 * @param up along the panel
 */
record PanelFrame(Vector3 normal, Vector3 left, Vector3 up) {

    /** A panel that leans by an angle, rad, its top forward. */
    static PanelFrame leaning(double rake) {
        double c = Math.cos(rake);
        double s = Math.sin(rake);
        return new PanelFrame(new Vector3(c, 0, -s), new Vector3(0, 1, 0), new Vector3(s, 0, c));
    }

    Vector3 place(double across, double along) {
        return left.times(across).plus(up.times(along));
    }

    Vector3 place(Spot spot) {
        return place(spot.x(), spot.y());
    }

    Vector3 place(ResolvedMount.Spot spot) {
        return place(spot.across(), spot.up());
    }

    /** First axis square to the panel. */
    Axes axes() {
        return new Axes(normal, left, up);
    }

    static Vector3 vector(ResolvedMount.Place place) {
        return new Vector3(place.x(), place.y(), place.z());
    }
}
