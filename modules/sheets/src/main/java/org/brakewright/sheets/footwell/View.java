package org.brakewright.sheets.footwell;

import org.brakewright.drawing.Point;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.sheets.Measure;

/** From where the pedals are looked at. */
enum View {
    PLAN("plan", "from above", "From above: the nose of the car up, its left on the left.") {
        @Override
        Point at(Place place) {
            return Measure.place(-place.y(), place.x());
        }
    },
    SIDE("side", "from the left", "From the left of the car, its nose to the right.") {
        @Override
        Point at(Place place) {
            return Measure.place(place.x(), place.z());
        }
    },
    FRONT("front", "from the driver", "From the driver's seat: the car's left is on the left.") {
        @Override
        Point at(Place place) {
            return Measure.place(-place.y(), place.z());
        }
    };

    private final String key;
    private final String title;
    private final String words;

    View(String key, String title, String words) {
        this.key = key;
        this.title = title;
        this.words = words;
    }

    String key() {
        return key;
    }

    String title() {
        return title;
    }

    String words() {
        return words;
    }

    /** A place on the paper, mm. */
    abstract Point at(Place place);
}
