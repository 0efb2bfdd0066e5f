package org.brakewright.app.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What can be printed and cut from; counterpart of {@code ui/src/sheetsContract.ts}.
 *
 * @param revision of the build file
 * @param advice what to do before anything is cut
 * @param sheets in the order in which they are used
 */
public record SheetsView(int revision, String advice, List<SheetView> sheets) {
    /**
     * One sheet.
     *
     * @param key name of its files
     * @param title in words
     * @param use what it is for: "template"
     * @param size how far it reaches on paper
     * @param stamp why nothing may be cut or set from it; null when it may
     */
    public record SheetView(
            String key,
            String title,
            String use,
            String size,
            @Nullable String stamp) {}
}
