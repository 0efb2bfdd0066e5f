package org.brakewright.drawing.write;

import java.util.List;
import java.util.stream.Collectors;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;

/** Writes SVG 1.1 in millimeters: a user unit is 1 mm, and y runs down from the upper edge. One group a layer. */
public final class SvgWriter {
    private SvgWriter() {}

    /** The whole drawing on one page as large as it needs. */
    public static String write(Drawing drawing) {
        return write(Pages.whole(drawing));
    }

    /** One page; what reaches beyond its window is cut off. */
    public static String write(Page page) {
        Bounds media = page.media();
        String width = SvgMarks.number(media.width());
        String height = SvgMarks.number(media.height());
        SvgMarks marks = new SvgMarks(media);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + width + "mm\" height=\""
                + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n"
                + "<defs><clipPath id=\"window\">" + marks.rectangle(page.window()) + "</clipPath></defs>\n"
                + "<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\"/>\n"
                + "<g clip-path=\"url(#window)\">\n" + groups(marks, page.artwork(), "") + "</g>\n"
                + groups(marks, page.furniture(), "sheet-")
                + "</svg>\n";
    }

    private static String groups(SvgMarks marks, List<Mark> all, String prefix) {
        var text = new StringBuilder();
        for (Layer layer : Layer.values()) {
            String inside = all.stream()
                    .filter(mark -> Layers.of(mark) == layer)
                    .map(marks::element)
                    .collect(Collectors.joining());
            if (!inside.isEmpty()) {
                text.append("<g id=\"").append(prefix).append(layer).append("\">\n");
                text.append(inside).append("</g>\n");
            }
        }
        return text.toString();
    }
}
