package org.brakewright.analysis.resolve;

import java.util.List;
import org.brakewright.model.Given;
import org.brakewright.model.mount.Place;
import org.brakewright.model.mount.Spot;
import org.brakewright.model.resolved.ResolvedMount;

/** Takes the points of a mount. */
record MountPoints(Values values) {
    List<ResolvedMount.Spot> spots(List<Spot> spots) {
        return spots.stream().map(this::spot).toList();
    }

    ResolvedMount.Spot spot(Spot spot) {
        return spot(spot.across(), spot.up());
    }

    ResolvedMount.Spot spot(Given across, Given up) {
        return new ResolvedMount.Spot(values.need(across), values.need(up));
    }

    ResolvedMount.Place place(Place place) {
        return new ResolvedMount.Place(
                values.need(place.forward()), values.need(place.left()), values.need(place.up()));
    }
}
