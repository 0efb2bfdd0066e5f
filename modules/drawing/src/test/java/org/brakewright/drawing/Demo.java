package org.brakewright.drawing;

import java.util.List;

/** Invented drawings that several tests write. */
public final class Demo {
    private Demo() {}

    /** A title block; whoever has to approve has not. */
    public static TitleBlock title() {
        return new TitleBlock(
                "Demo workshop", "Doubler <left> & right", "D-0042", "2026-11-25", "1", "A. Builder", "", "Template");
    }

    /** A plate of a size in mm with one hole, a level line 120 mm long, a quarter arc and a dimension. */
    public static Drawing plate(double width, double height) {
        Point middle = new Point(width / 2, height / 2);
        return Drawing.of(
                title(),
                List.of(
                        new Bounds(0, 0, width, height).outline(Stroke.OUTLINE),
                        new Circle(middle, 12.5, Stroke.HOLE),
                        new Arc(middle, 20, 0, 90, Stroke.CENTRE),
                        new Line(new Point(5, 10), new Point(125, 10), Stroke.BEND.with(LineKind.CONTINUOUS)),
                        Text.of(new Point(5, 12), 3.5, "bend 90° up & <over>"),
                        new Dimension.Linear(new Point(0, 0), new Point(0, height), Dimension.Along.Y, 8, "")));
    }
}
