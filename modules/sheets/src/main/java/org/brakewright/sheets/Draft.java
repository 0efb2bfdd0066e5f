package org.brakewright.sheets;

import java.util.List;

/**
 * A sheet before it is numbered, stamped and given its cautions.
 *
 * @param key name of its files, lower case with hyphens
 * @param title for its title block
 * @param use what it is for
 * @param column what it shows, at true scale
 * @param drawnFrom key paths of the build file it follows from; a path stands for all below it
 */
public record Draft(String key, String title, Use use, Column column, List<String> drawnFrom) {
    public Draft {
        drawnFrom = List.copyOf(drawnFrom);
    }

    /** What a sheet is for, as the title block calls it, and what a stop finding forbids. */
    public enum Use {
        TEMPLATE("template", "DO NOT CUT"),
        CUTTING("cutting sheet", "DO NOT CUT"),
        SETTING("setting sheet", "DO NOT DRIVE SO");

        private final String words;
        private final String forbids;

        Use(String words, String forbids) {
            this.words = words;
            this.forbids = forbids;
        }

        String words() {
            return words;
        }

        String forbids() {
            return forbids;
        }
    }

    /** Whether a key path is among those it is drawn from, or leads to one. */
    boolean follows(String path) {
        return drawnFrom.stream().anyMatch(from -> within(path, from) || within(from, path));
    }

    private static boolean within(String path, String whole) {
        return path.equals(whole) || path.startsWith(whole + ".") || path.startsWith(whole + "[");
    }
}
