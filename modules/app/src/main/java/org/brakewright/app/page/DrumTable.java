package org.brakewright.app.page;

import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.brake.DrumResult;
import org.brakewright.analysis.brake.ShoeResult;
import org.brakewright.app.words.Show;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** The drums of a car in a table. */
public final class DrumTable {
    private final Show show;

    /** The table in a system of units. */
    public DrumTable(Show show) {
        this.show = show;
    }

    /** One row a pair of drums; null on a car without any. */
    public PageView.@Nullable Table of(Analysis analysis) {
        return analysis.drums().isEmpty()
                ? null
                : new PageView.Table(
                        "Drum brakes: factor forward and backward, and what lining friction does to it",
                        List.of(
                                "drums",
                                "shoes",
                                "forward",
                                "backward",
                                "first shoe",
                                "friction",
                                "locks from",
                                "10 % less",
                                "10 % more",
                                "lining pressure"),
                        analysis.drums().stream().map(this::row).toList());
    }

    private List<String> row(DrumResult drum) {
        ShoeResult shoes = drum.geometry();
        String where = words(drum.where());
        String arrangement = words(drum.shoes());
        if (shoes == null) {
            String factor = show.fixed(drum.brakeFactor(), 2);
            return List.of(where, arrangement, factor, "-", "-", "-", "-", "-", "-", "-");
        }
        return List.of(
                where,
                arrangement,
                factor(shoes.factorForward()),
                factor(shoes.factorBackward()),
                shoes.firstShoeShare() == null ? "-" : show.percent(shoes.firstShoeShare()),
                show.fixed(shoes.liningFriction(), 2),
                show.fixed(shoes.selfLockFriction(), 2),
                factor(shoes.factorAtLessFriction()),
                factor(shoes.factorAtMoreFriction()),
                shoes.liningPressurePa() == null ? "-" : show.value(shoes.liningPressurePa(), Dimension.PRESSURE));
    }

    private String factor(@Nullable Double factor) {
        return factor == null ? "locks" : show.fixed(factor, 2);
    }

    private static String words(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
