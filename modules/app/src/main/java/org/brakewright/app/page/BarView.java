package org.brakewright.app.page;

import java.util.List;
import org.brakewright.analysis.balance.BarOutline;

/** The balance bar as the page draws it; its parts are explained in {@code ui/src/mechanismContract.ts}. */
public record BarView(List<Stance> stances, Range range, PageView.Table table) {

    /** The bar in one stance. */
    public record Stance(String key, String title, String sentence, BarOutline outline) {}

    /** What the adjuster has left. */
    public record Range(double turnsLeftToFront, double turnsLeftToRear, String toFront, String toRear, String now) {}
}
