package org.brakewright.kernel.hydraulics;

/**
 * How a chamber's stroke becomes volume: nothing until the port closes, then A times the rest.
 *
 * @param area of the piston, m2
 * @param lostStroke until the port closes, m
 * @param fullStroke to the end of the bore, lost stroke included, m
 */
public record MasterStroke(double area, double lostStroke, double fullStroke) {
    public MasterStroke {
        Demand.positive("area", area);
        Demand.positive("fullStroke", fullStroke);
        Demand.within("lostStroke", lostStroke, lostStroke >= 0 && lostStroke < fullStroke, "0 to below fullStroke");
    }

    /** Stroke (m) that delivers a volume (m3, not negative); it may exceed the full stroke, see {@link #left}. */
    public double stroke(double volume) {
        return lostStroke + volume / area;
    }

    /** Volume (m3) delivered at a stroke (m); no more than the chamber holds. */
    public double volume(double stroke) {
        return area * Math.max(0, Math.min(stroke, fullStroke) - lostStroke);
    }

    /** Volume (m3) of the whole useful stroke. */
    public double capacity() {
        return area * (fullStroke - lostStroke);
    }

    /** Stroke (m) left after delivering a volume (m3); negative when the chamber runs out. */
    public double left(double volume) {
        return fullStroke - stroke(volume);
    }
}
