package org.brakewright.drawing.write;

import java.util.stream.Collectors;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Decimal;
import org.brakewright.drawing.Edge;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.lettering.Lettering;

/** Marks as SVG elements, seen from the upper left corner of a page. */
record SvgMarks(Bounds media) {
    /** Numbers are written to 0.1 micrometer. */
    private static final int PLACES = 4;

    private static final String INK = "#000";
    private static final String WARNING_INK = "#c00";
    private static final double STAMP_LINE = 0.35;

    static String number(double value) {
        return Decimal.text(value, PLACES);
    }

    String element(Mark mark) {
        return switch (mark) {
            case Line line -> path("M" + at(line.from()) + "L" + at(line.to()), line.stroke());
            case Circle circle -> circle(circle);
            case Arc arc -> path("M" + at(arc.at(arc.start())) + halves(arc, arc.at(arc.end())), arc.stroke());
            case Polyline line -> path(way(line), line.stroke());
            case Text text -> text(text);
        };
    }

    String rectangle(Bounds bounds) {
        return "<rect x=\"" + x(bounds.minX()) + "\" y=\"" + y(bounds.maxY()) + "\" width=\"" + number(bounds.width())
                + "\" height=\"" + number(bounds.height()) + "\"/>";
    }

    private String circle(Circle circle) {
        return "<circle cx=\"" + x(circle.centre().x()) + "\" cy=\""
                + y(circle.centre().y()) + "\" r=\"" + number(circle.radius()) + "\"" + look(circle.stroke()) + "/>\n";
    }

    private static String path(String way, Stroke stroke) {
        return "<path d=\"" + way + "\"" + look(stroke) + "/>\n";
    }

    private String way(Polyline line) {
        String edges = line.edges().stream().map(this::edge).collect(Collectors.joining());
        return "M" + at(line.vertices().getFirst().at()) + edges + (line.closed() ? "Z" : "");
    }

    private String edge(Edge edge) {
        if (edge.straight()) {
            return "L" + at(edge.to());
        }
        Arc arc = edge.arc(Stroke.OUTLINE);
        Point middle = arc.at(arc.start() + arc.sweep() / 2);
        boolean left = edge.bulge() > 0;
        return part(arc.radius(), left, middle) + part(arc.radius(), left, edge.to());
    }

    /** An arc in two halves: one piece cannot tell a full turn from none. */
    private String halves(Arc arc, Point end) {
        return part(arc.radius(), true, arc.at(arc.start() + arc.sweep() / 2)) + part(arc.radius(), true, end);
    }

    /** Turning left is sweep 0 where y runs down. */
    private String part(double radius, boolean left, Point to) {
        String size = number(radius);
        return "A" + size + " " + size + " 0 0 " + (left ? 0 : 1) + " " + at(to);
    }

    /** The length is stated, so that another font takes the same room. */
    private String text(Text text) {
        Point start = text.start();
        String turn =
                text.rotation() == 0 ? "" : " transform=\"rotate(" + number(-text.rotation()) + " " + at(start) + ")\"";
        return "<text x=\"" + x(start.x()) + "\" y=\"" + y(start.y()) + "\"" + turn + " font-family=\""
                + Lettering.FAMILY + ", sans-serif\" font-size=\"" + number(Lettering.size(text.height()))
                + "\" textLength=\"" + number(text.width()) + "\" lengthAdjust=\"spacingAndGlyphs\"" + look(text) + ">"
                + escaped(Lettering.printable(text.words())) + "</text>\n";
    }

    private static String look(Text text) {
        return text.layer() == Layer.STAMP
                ? " fill=\"none\" stroke=\"" + WARNING_INK + "\" stroke-width=\"" + number(STAMP_LINE) + "\""
                : " fill=\"" + INK + "\"";
    }

    private static String look(Stroke stroke) {
        String dashes = stroke.dashes().stream().map(SvgMarks::number).collect(Collectors.joining(" "));
        return " fill=\"none\" stroke=\"" + (stroke.layer() == Layer.STAMP ? WARNING_INK : INK) + "\" stroke-width=\""
                + number(stroke.width().mm()) + "\""
                + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private String at(Point point) {
        return x(point.x()) + " " + y(point.y());
    }

    private String x(double x) {
        return number(x - media.minX());
    }

    private String y(double y) {
        return number(media.maxY() - y);
    }
}
