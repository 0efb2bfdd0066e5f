package org.brakewright.model;

/** Where a value comes from. */
public enum Origin {
    /** Taken with tape, scales or gauge on this car. */
    MEASURED("measured"),
    /** Read off the part or its sheet. */
    PART_SHEET("part sheet"),
    /** The builder's own guess, kept in the ledger of assumptions. */
    ASSUMED("assumed"),
    /** Worked out from other values. */
    COMPUTED("computed"),
    /** Written in the build file without saying where it comes from. */
    UNSTATED("origin not said");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /** The words the build file and the page use. */
    public String words() {
        return words;
    }
}
