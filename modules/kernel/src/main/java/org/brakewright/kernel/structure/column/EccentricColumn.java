package org.brakewright.kernel.structure.column;

/**
 * A column pressed off its axis: it bends from the first newton on.
 *
 * <p>Source: the secant formula, R. C. Hibbeler, Mechanics of Materials, section 13.4.
 *
 * @param offset of the load from the axis, m
 * @param fibre distance of the extreme fibre from the axis, m
 */
public record EccentricColumn(EulerColumn column, double offset, double fibre) {
    private static final int HALVINGS = 200;

    public EccentricColumn {
        Require.that(offset >= 0 && Double.isFinite(offset), "offset", offset, "must be finite and not below zero");
        Require.positive("fibre", fibre);
    }

    /** How far the middle bows out, m; the load must lie below the critical one. */
    public double bow(double load) {
        return offset * (secant(load) - 1);
    }

    /** The greatest stress, Pa; the load must lie below the critical one. */
    public double greatestStress(double load) {
        double perLoad = 1 / column.area() + offset * fibre / column.secondMoment() * secant(load);
        return load * perLoad;
    }

    /** The load at which the greatest stress reaches a limit, N; without offset at most the critical load. */
    public double loadAt(double stress) {
        Require.positive("stress", stress);
        double low = 0;
        double high = column.criticalLoad();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (middle < column.criticalLoad() && greatestStress(middle) < stress) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double secant(double load) {
        double critical = column.criticalLoad();
        Require.that(load >= 0 && load < critical, "load", load, "must lie from 0 to below the critical load");
        return 1 / Math.cos(Math.PI / 2 * Math.sqrt(load / critical));
    }
}
