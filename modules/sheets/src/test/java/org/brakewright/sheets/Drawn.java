package org.brakewright.sheets;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Marks;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Text;

/** What stands on the drawings of a sheet. */
public record Drawn(List<Mark> marks) {
    /** All marks of a sheet. */
    public static Drawn of(Sheet sheet) {
        return new Drawn(sheet.drawings().stream()
                .flatMap(drawing -> Marks.of(drawing.shapes()).stream())
                .toList());
    }

    /** Words in the order drawn. */
    public List<String> words() {
        return only(Text.class).map(Text::words).toList();
    }

    /** Circles in the order drawn. */
    public List<Circle> circles() {
        return only(Circle.class).toList();
    }

    /** Straight lines in the order drawn. */
    public List<Line> lines() {
        return only(Line.class).toList();
    }

    /** Polylines in the order drawn. */
    public List<Polyline> polylines() {
        return only(Polyline.class).toList();
    }

    private <T extends Mark> Stream<T> only(Class<T> kind) {
        return marks.stream().filter(kind::isInstance).map(kind::cast);
    }
}
