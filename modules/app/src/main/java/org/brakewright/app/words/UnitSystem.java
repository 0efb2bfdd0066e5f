package org.brakewright.app.words;

import java.util.Locale;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Preferred;
import org.brakewright.quantity.Unit;

/** Units in which results are shown. */
public enum UnitSystem {
    METRIC(Preferred.METRIC),
    US(Preferred.US);

    private final Preferred preferred;

    UnitSystem(Preferred preferred) {
        this.preferred = preferred;
    }

    /** The system of that name, metric when there is none. */
    public static UnitSystem named(String name) {
        return name.toLowerCase(Locale.ROOT).equals("us") ? US : METRIC;
    }

    /** Unit in which a kind of quantity is shown. */
    public Unit unit(Dimension dimension) {
        if (dimension == Dimension.PRESSURE) {
            return this == US ? Unit.PSI : Unit.BAR;
        }
        return preferred.unit(dimension);
    }

    /** The other system. */
    public UnitSystem other() {
        return this == US ? METRIC : US;
    }
}
