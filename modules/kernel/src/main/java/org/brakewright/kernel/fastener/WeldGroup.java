package org.brakewright.kernel.fastener;

import java.util.List;
import java.util.stream.Stream;

/**
 * Fillet welds of one size, treated as lines: the force per length over the throat is taken as shear, whichever way it
 * points.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, 9th ed., sections 9-3 and 9-4.
 *
 * @param leg size of the fillet, m
 */
public record WeldGroup(List<WeldLine> lines, double leg) {
    /** Throat over leg of an even fillet, as the source rounds it. */
    private static final double THROAT = 0.707;

    public WeldGroup {
        lines = List.copyOf(lines);
        Require.that(!lines.isEmpty(), "lines", lines.size(), "must hold a weld");
        Require.positive("leg", leg);
    }

    /** m. */
    public double throat() {
        return THROAT * leg;
    }

    /** Length of all lines, m. */
    public double length() {
        return pattern().amount();
    }

    /** Unit polar second moment about the centroid, m3. */
    public double unitPolar() {
        return pattern().along() + pattern().across();
    }

    /** The greatest stress in the throat, at the ends of the lines, Pa. */
    public double greatestStress(JointLoad load) {
        Pattern pattern = pattern();
        Require.that(pattern.carries(load), "lines", lines.size(), "must be spread out to carry the moment");
        return lines.stream()
                .flatMap(line -> Stream.of(line.from(), line.to()))
                .map(end -> pattern.share(load, end))
                .mapToDouble(share -> Math.hypot(Math.hypot(share.x(), share.y()), share.z()) / throat())
                .max()
                .orElseThrow();
    }

    private Pattern pattern() {
        double length = lines.stream().mapToDouble(WeldLine::length).sum();
        Point center = new Point(
                lines.stream().mapToDouble(l -> l.length() * l.middle().x()).sum() / length,
                lines.stream().mapToDouble(l -> l.length() * l.middle().y()).sum() / length);
        double x = 0;
        double y = 0;
        double product = 0;
        for (WeldLine line : lines) {
            Point arm = line.middle().minus(center);
            Point along = line.to().minus(line.from());
            x += line.length() * (arm.x() * arm.x() + along.x() * along.x() / 12);
            y += line.length() * (arm.y() * arm.y() + along.y() * along.y() / 12);
            product += line.length() * (arm.x() * arm.y() + along.x() * along.y() / 12);
        }
        return Pattern.of(length, center, new JointLoad.Components(x, y, product));
    }
}
