package org.brakewright.kernel.tubing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A strip folded across its width, laid flat. Legs are told to their outside corners, where the outer faces of two legs
 * would meet; the flat part of a leg is shorter by what each of its bends takes from it.
 *
 * <p>Source: geometry, with the unstretched layer of {@link SheetBend}.
 *
 * @param legs m
 * @param angles of the bends between them from flat, rad, plus up
 * @param bend that all bends share
 */
public record FoldedStrip(List<Double> legs, List<Double> angles, SheetBend bend) {
    public FoldedStrip {
        legs = List.copyOf(legs);
        angles = List.copyOf(angles);
        Demand.holds(
                angles.size() == legs.size() - 1,
                "angles must be one less than legs, " + legs.size() + ", are " + angles.size());
        legs.forEach(leg -> Demand.positive("leg", leg));
        angles.forEach(angle -> Demand.belowHalfTurn("angle", Math.abs(angle)));
    }

    /**
     * A bend on the flat strip.
     *
     * @param start where the bend begins, from the strip's end, m
     * @param end where it ends, m
     * @param angle from flat, rad, plus up
     */
    public record Line(double start, double end, double angle) {
        /** Middle of the bend, m. */
        public double middle() {
            return (start + end) / 2;
        }
    }

    /** Flat parts (m) of the legs; not above 0 where the bends of a leg meet. */
    public List<Double> flats() {
        return IntStream.range(0, legs.size())
                .mapToObj(leg -> legs.get(leg) - before(leg) - after(leg))
                .toList();
    }

    /** The bends on the flat strip, in order. */
    public List<Line> lines() {
        return IntStream.range(0, angles.size())
                .mapToObj(i -> new Line(end(i), end(i) + allowance(i), angles.get(i)))
                .toList();
    }

    /** Length (m) of the flat strip. */
    public double length() {
        return end(legs.size() - 1);
    }

    /** Place (m) on the flat strip of what stands {@code along} (m) from the outside corner where a leg, from 0, begins. */
    public double place(int leg, double along) {
        return start(leg) + along - before(leg);
    }

    /** Where the flat part of a leg begins on the flat strip, m. */
    private double start(int leg) {
        return leg == 0 ? 0 : end(leg - 1) + allowance(leg - 1);
    }

    private double end(int leg) {
        return start(leg) + flats().get(leg);
    }

    private double allowance(int bendIndex) {
        return bend.allowance(Math.abs(angles.get(bendIndex)));
    }

    /** From the outside corner to where the bend ends (m), for the bend before a leg. */
    private double before(int leg) {
        return leg == 0 ? 0 : setBack(leg - 1);
    }

    /** The same for the bend after it. */
    private double after(int leg) {
        return leg == angles.size() ? 0 : setBack(leg);
    }

    private double setBack(int bendIndex) {
        return (bend.insideRadius() + bend.thickness()) * Math.tan(Math.abs(angles.get(bendIndex)) / 2);
    }
}
