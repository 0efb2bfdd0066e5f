package org.brakewright.quantity;

import java.io.Serial;
import java.util.List;

/** Carries a refusal out of the depths of the reader; {@link QuantityReader} turns it into a value and never lets it go. */
final class Refusal extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    private final transient Reading.Refused refused;

    Refusal(String reason, List<String> offers) {
        super(reason, null, false, false);
        this.refused = new Reading.Refused(reason, offers);
    }

    Refusal(String reason) {
        this(reason, List.of());
    }

    Reading.Refused refused() {
        return refused;
    }
}
