package org.brakewright.model;

/** How well a figure that comes from outside is known. */
public enum Tag {
    /** Read in the legal text, the standard or the publisher's own abstract. */
    VERIFIED("read in the text"),
    /** Read in a secondary source. */
    SECONDARY("from a secondary source"),
    /** Recalled, the clause not opened: never alone decides a pass. */
    FROM_MEMORY("from memory, check the clause"),
    /** Arithmetic from other figures. */
    DERIVED("derived"),
    /** What the trade does, without a source to name. */
    COMMON_PRACTICE("common practice, no source"),
    /** An engineer's estimate: a yardstick, never the pass mark of a rule. */
    ESTIMATE("estimate, no source"),
    /** From the part sheet, as the builder wrote it down. */
    PART_SHEET("from the part sheet"),
    /** The builder's own wish or guess. */
    BUILDERS_CHOICE("the builder's own figure");

    private final String words;

    Tag(String words) {
        this.words = words;
    }

    /** The words for people. */
    public String words() {
        return words;
    }
}
