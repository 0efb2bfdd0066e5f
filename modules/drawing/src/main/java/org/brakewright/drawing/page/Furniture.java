package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.lettering.Wrap;

/** What stands around a window: upright check bars to the left, level ones and the title block below. */
final class Furniture {
    static final String SENTENCE = "Print at 100 %, no fit-to-page; measure the bars before cutting";

    /** The smallest window that leaves room for check bars and title block. */
    static final double LEAST_WIDTH = 176;

    static final double LEAST_HEIGHT = 122;

    private static final double LEFT = 14;
    private static final double CHECK_STRIP = 15;
    private static final double BELOW = CHECK_STRIP + TitleStrip.HEIGHT;

    /** From the left end of the strip to the sentence: behind bars and labels. */
    private static final double SENTENCE_START = 124;

    private static final double SENTENCE_HEIGHT = 3;

    private Furniture() {}

    static Bounds window(Bounds frame) {
        return new Bounds(frame.minX() + LEFT, frame.minY() + BELOW, frame.maxX(), frame.maxY());
    }

    static Bounds frame(Bounds window) {
        return new Bounds(window.minX() - LEFT, window.minY() - BELOW, window.maxX(), window.maxY());
    }

    static Bounds checkStrip(Bounds window) {
        return new Bounds(window.minX() - LEFT, window.minY() - CHECK_STRIP, window.maxX(), window.minY());
    }

    static List<Mark> around(Bounds window, Legend legend) {
        Bounds frame = frame(window);
        var marks = new ArrayList<Mark>();
        marks.add(frame.outline(Stroke.FRAME));
        marks.add(window.outline(Stroke.FRAME));
        CheckBar.around(window).forEach(bar -> marks.addAll(bar.marks()));
        marks.addAll(sentence(checkStrip(window)));
        marks.addAll(TitleStrip.marks(new Point(frame.maxX() - TitleStrip.WIDTH, frame.minY()), legend));
        return marks;
    }

    private static List<Mark> sentence(Bounds strip) {
        double room = strip.width() - SENTENCE_START - 3;
        Wrap.Block block = Wrap.fitted(SENTENCE, SENTENCE_HEIGHT, room, CHECK_STRIP - 1);
        double feed = Wrap.LINE_FEED * block.height();
        double y = strip.middle().y() + feed * block.lines().size() / 2 - 1.3 * block.height();
        var marks = new ArrayList<Mark>();
        for (int i = 0; i < block.lines().size(); i++) {
            Point anchor = new Point(strip.minX() + SENTENCE_START, y - i * feed);
            marks.add(Text.of(anchor, block.height(), block.lines().get(i)).on(Layer.CHECK));
        }
        return marks;
    }
}
