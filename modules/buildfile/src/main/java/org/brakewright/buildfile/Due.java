package org.brakewright.buildfile;

import org.brakewright.model.Given;

/** Says what would be accepted at a key. */
final class Due {
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_STORY = 20_000;
    private static final String STORY = "story";

    private Due() {}

    /** What a key accepts, in words that follow "write". */
    static String at(Slot slot) {
        String one = one(slot);
        return slot.list() ? "a list, each entry " + one : one;
    }

    /** What one entry accepts. */
    static String one(Slot slot) {
        Class<?> type = slot.type();
        if (type == Given.class) {
            return slot.asked().map(Limits::due).orElse("a quantity");
        }
        if (type.isSealed()) {
            return "a section with kind: "
                    + String.join(" or ", Slot.kinds(type).keySet());
        }
        return type.isRecord() ? section(type) : scalar(slot);
    }

    /** Names the keys of a section. */
    static String section(Class<?> type) {
        return "a section with "
                + String.join(", ", Slot.of(type).stream().map(Slot::key).toList());
    }

    /** Most characters that a text may have: a story is long, a name is short. */
    static int longest(Slot slot) {
        return slot.key().equals(STORY) ? LONGEST_STORY : LONGEST_NAME;
    }

    private static String scalar(Slot slot) {
        Class<?> type = slot.type();
        if (type.isEnum()) {
            return String.join(", ", Slot.choices(type));
        }
        if (type == Boolean.class || type == boolean.class) {
            return "yes or no";
        }
        return type == String.class ? "a text of at most " + longest(slot) + " characters" : "a whole number";
    }
}
