package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.lettering.Wrap;
import org.jspecify.annotations.Nullable;

/** Words across a window, as large as they go. */
final class Stamp {
    private static final double ANGLE = 35;
    private static final double HIGHEST = 20;

    /** Parts of the room that the words may take along and across their baseline, so that all stay in the window. */
    private static final double ALONG = 0.75;

    private static final double ACROSS = 0.25;

    private Stamp() {}

    static List<Mark> across(Bounds window, @Nullable String words) {
        if (words == null) {
            return List.of();
        }
        double angle = Math.toRadians(ANGLE);
        double along = ALONG * Math.min(window.width() / Math.cos(angle), window.height() / Math.sin(angle));
        double across = ACROSS * Math.min(window.width(), window.height());
        Wrap.Block block = Wrap.fitted(words, HIGHEST, along, across);
        double feed = Wrap.LINE_FEED * block.height();
        var marks = new ArrayList<Mark>();
        for (int i = 0; i < block.lines().size(); i++) {
            double up = feed * (block.lines().size() - 1) / 2 - i * feed - block.height() / 2;
            Point anchor = window.middle().polar(up, ANGLE + 90);
            marks.add(new Text(anchor, block.height(), block.lines().get(i), Align.CENTER, ANGLE, Layer.STAMP));
        }
        return marks;
    }
}
