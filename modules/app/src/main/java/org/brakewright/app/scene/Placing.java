package org.brakewright.app.scene;

import org.brakewright.model.resolved.ResolvedMount.Place;

/** From a part's own zero to the zero of the car. */
final class Placing {
    private Placing() {}

    /** A place as it lies from the zero of the car. */
    static Place moved(Place place, Place zero) {
        return new Place(place.x() + zero.x(), place.y() + zero.y(), place.z() + zero.z());
    }
}
