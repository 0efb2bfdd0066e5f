package org.brakewright.app.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedMount.Place;

/** Places in metres as the page takes them: mm to the hundredth, one coordinate after the other. */
final class Spots {
    private Spots() {}

    static List<Double> of(ResolvedLines.Spot... spots) {
        return of(Arrays.asList(spots));
    }

    static List<Double> of(List<ResolvedLines.Spot> spots) {
        List<Double> flat = new ArrayList<>(3 * spots.size());
        spots.forEach(spot -> add(flat, spot.x(), spot.y(), spot.z()));
        return List.copyOf(flat);
    }

    static List<Double> of(Place... places) {
        List<Double> flat = new ArrayList<>(3 * places.length);
        for (Place place : places) {
            add(flat, place.x(), place.y(), place.z());
        }
        return List.copyOf(flat);
    }

    /** A length in metres, as mm to the hundredth. */
    static double millimetre(double metre) {
        return Math.rint(metre * 1e5) / 100;
    }

    private static void add(List<Double> flat, double x, double y, double z) {
        flat.add(millimetre(x));
        flat.add(millimetre(y));
        flat.add(millimetre(z));
    }
}
