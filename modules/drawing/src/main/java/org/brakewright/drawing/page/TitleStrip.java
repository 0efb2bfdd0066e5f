package org.brakewright.drawing.page;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Marks;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.TitleBlock;

/** The title block: fields of ISO 7200, 180 mm wide (from memory). */
final class TitleStrip {
    static final double WIDTH = 180;
    static final double HEIGHT = 27;

    private static final double ROW = 9;
    private static final double PADDING = 1.5;
    private static final double CAPTION = 1.8;
    private static final double WORDS = 2.5;
    private static final double TITLE = 3.5;

    private record Cell(Bounds box, String caption, String words, double height) {
        Stream<Mark> marks() {
            Point left = box.corner().plus(PADDING, 0);
            double room = box.width() - 2 * PADDING;
            Text head = Text.of(left.plus(0, ROW - CAPTION - 0.9), CAPTION, caption);
            Text body = Text.of(left.plus(0, 1.6), height, words);
            return Stream.concat(
                    Stream.of(box.outline(Stroke.FRAME)),
                    Marks.of(List.of(head.within(room), body.within(room))).stream()
                            .map(TitleStrip::framed));
        }
    }

    private record Row(Point left) {
        Cell cell(double x, double width, String caption, String words) {
            return new Cell(Bounds.at(left.plus(x, 0), width, ROW), caption, words, WORDS);
        }
    }

    private TitleStrip() {}

    /** The block with its lower left corner at a place. */
    static List<Mark> marks(Point at, Legend legend) {
        TitleBlock title = legend.title();
        Row upper = new Row(at.plus(0, 2 * ROW));
        Row middle = new Row(at.plus(0, ROW));
        Row lower = new Row(at);
        return Stream.of(
                        upper.cell(0, 45, "Legal owner", title.owner()),
                        new Cell(Bounds.at(upper.left.plus(45, 0), 135, ROW), "Title", title.title(), TITLE),
                        middle.cell(0, 45, "Document type", title.type()),
                        middle.cell(45, 75, "Identification number", title.number()),
                        middle.cell(120, 30, "Issue date", title.issued()),
                        middle.cell(150, 30, "Sheet", title.sheet()),
                        lower.cell(0, 45, "Created by", title.creator()),
                        lower.cell(45, 45, "Approved by", title.approver()),
                        lower.cell(90, 30, "Scale", legend.scale()),
                        lower.cell(120, 60, "Page", legend.page()))
                .flatMap(Cell::marks)
                .toList();
    }

    private static Mark framed(Mark mark) {
        return mark instanceof Text text ? text.on(Layer.FRAME) : mark;
    }
}
