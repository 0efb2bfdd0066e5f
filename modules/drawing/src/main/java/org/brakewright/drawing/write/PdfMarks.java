package org.brakewright.drawing.write;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.brakewright.drawing.Arc;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Edge;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.lettering.Lettering;

/**
 * Marks on a PDF page. Lines end where they end (butt caps), so that the ink of a check bar is as long as the bar;
 * corners are round, so that no miter reaches beyond an outline.
 */
record PdfMarks(PDPageContentStream stream, PDFont font, Scale scale) {
    private static final int ROUND_JOIN = 1;
    private static final float STAMP_LINE = Scale.points(0.35);
    private static final float[] INK = {0, 0, 0};
    private static final float[] WARNING_INK = {0.8f, 0, 0};

    /** A cubic curve for a part of an arc this wide is off by less than a millionth of the radius, degrees. */
    private static final double WIDEST_CURVE = 30;

    /** From millimeters to points of 1/72 in, seen from the lower left corner of the paper. */
    record Scale(Point corner) {
        static float points(double mm) {
            return (float) (mm * 72 / 25.4);
        }

        float x(Point point) {
            return points(point.x() - corner.x());
        }

        float y(Point point) {
            return points(point.y() - corner.y());
        }
    }

    void clip(Bounds window) throws IOException {
        stream.addRect(
                scale.x(window.corner()),
                scale.y(window.corner()),
                Scale.points(window.width()),
                Scale.points(window.height()));
        stream.clip();
    }

    void draw(List<Mark> marks) throws IOException {
        stream.setLineJoinStyle(ROUND_JOIN);
        for (Mark mark : marks) {
            draw(mark);
        }
    }

    private void draw(Mark mark) throws IOException {
        switch (mark) {
            case Line line ->
                stroke(line.stroke(), () -> {
                    moveTo(line.from());
                    lineTo(line.to());
                });
            case Circle circle ->
                stroke(circle.stroke(), () -> {
                    arc(new Arc(circle.centre(), circle.radius(), 0, 360, circle.stroke()), true, true);
                    stream.closePath();
                });
            case Arc arc -> stroke(arc.stroke(), () -> arc(arc, true, true));
            case Polyline line -> stroke(line.stroke(), () -> way(line));
            case Text text -> text(text);
        }
    }

    /** A piece of path. */
    private interface Path {
        void draw() throws IOException;
    }

    private void stroke(Stroke stroke, Path path) throws IOException {
        ink(stroke.layer());
        stream.setLineWidth(Scale.points(stroke.width().mm()));
        List<Double> dashes = stroke.dashes();
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = Scale.points(dashes.get(i));
        }
        stream.setLineDashPattern(pattern, 0);
        path.draw();
        stream.stroke();
    }

    private void way(Polyline line) throws IOException {
        moveTo(line.vertices().getFirst().at());
        for (Edge edge : line.edges()) {
            if (edge.straight()) {
                lineTo(edge.to());
            } else {
                arc(edge.arc(line.stroke()), edge.bulge() > 0, false);
            }
        }
        if (line.closed()) {
            stream.closePath();
        }
    }

    /** The handles of a cubic curve for a turn t are 4/3 tan(t/4) radii long. */
    private void arc(Arc arc, boolean forwards, boolean fresh) throws IOException {
        double sweep = forwards ? arc.sweep() : -arc.sweep();
        double start = forwards ? arc.start() : arc.end();
        int parts = (int) Math.ceil(arc.sweep() / WIDEST_CURVE);
        double step = sweep / parts;
        double handle = 4.0 / 3 * Math.tan(Math.toRadians(step) / 4) * arc.radius();
        if (fresh) {
            moveTo(arc.at(start));
        }
        for (int i = 0; i < parts; i++) {
            double from = start + i * step;
            Point end = arc.at(from + step);
            curveTo(arc.at(from).polar(handle, from + 90), end.polar(-handle, from + step + 90), end);
        }
    }

    private void text(Text text) throws IOException {
        boolean stamp = text.layer() == Layer.STAMP;
        ink(text.layer());
        stream.setLineWidth(STAMP_LINE);
        stream.setLineDashPattern(new float[0], 0);
        stream.beginText();
        stream.setRenderingMode(stamp ? RenderingMode.STROKE : RenderingMode.FILL);
        stream.setFont(font, Scale.points(Lettering.size(text.height())));
        Point start = text.start();
        stream.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(text.rotation()), scale.x(start), scale.y(start)));
        stream.showText(Lettering.printable(text.words()));
        stream.endText();
    }

    private void ink(Layer layer) throws IOException {
        float[] ink = layer == Layer.STAMP ? WARNING_INK : INK;
        stream.setStrokingColor(ink[0], ink[1], ink[2]);
        stream.setNonStrokingColor(ink[0], ink[1], ink[2]);
    }

    private void moveTo(Point point) throws IOException {
        stream.moveTo(scale.x(point), scale.y(point));
    }

    private void lineTo(Point point) throws IOException {
        stream.lineTo(scale.x(point), scale.y(point));
    }

    private void curveTo(Point first, Point second, Point end) throws IOException {
        stream.curveTo(scale.x(first), scale.y(first), scale.x(second), scale.y(second), scale.x(end), scale.y(end));
    }
}
