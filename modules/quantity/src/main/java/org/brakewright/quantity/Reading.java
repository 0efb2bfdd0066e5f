package org.brakewright.quantity;

import java.util.List;

/** What came of reading a text: a quantity, or why there is none. */
public sealed interface Reading {
    /** The text made sense. */
    record Read(Quantity quantity) implements Reading {}

    /**
     * The text was refused.
     *
     * @param reason one plain sentence that quotes the text
     * @param offers whole texts that could be typed instead, likeliest first; may be empty
     */
    record Refused(String reason, List<String> offers) implements Reading {
        public Refused {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("reason must not be blank, was \"" + reason + "\"");
            }
            offers = List.copyOf(offers);
        }
    }
}
