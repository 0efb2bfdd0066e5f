package org.brakewright.app.words;

import java.util.Objects;
import org.brakewright.analysis.tolerance.Owner;
import org.brakewright.analysis.tolerance.Spread;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.brakewright.analysis.tolerance.Tolerance;
import org.brakewright.findings.Figure;
import org.brakewright.findings.State;

/** A tolerance run in words. From the 5 to the 95 % quantile lie nine cars of ten. */
public final class SpreadWords {
    private static final double MOST = 0.5;
    private static final double SELDOM = 0.05;

    private final Show show;

    /** Words with values in a system of units. */
    public SpreadWords(Show show) {
        this.show = show;
    }

    /** What spreads: "Pedal effort". */
    public static String label(Spread spread) {
        return switch (spread.measure()) {
            case EFFORT -> "Pedal effort";
            case TRAVEL -> "Pedal travel";
            case FRONT_SHARE -> "Front share";
            case CRITICAL_DECELERATION -> "Rear first above, " + spread.loadCase();
        };
    }

    /** A value of a measure with its unit. */
    public String value(Measure measure, double value) {
        return switch (measure) {
            case EFFORT -> show.figure(Figure.force(value));
            case TRAVEL -> show.figure(Figure.length(value));
            case FRONT_SHARE -> show.percent(value);
            case CRITICAL_DECELERATION -> show.figure(Figure.g(value));
        };
    }

    /** Whether cars built like this one stay within their limit; a spread never says stop, that is for the findings. */
    public static State state(Spread spread) {
        Double beyond = spread.beyondLimit();
        if (spread.band() == null) {
            return State.CANNOT_TELL;
        }
        return (beyond == null || beyond == 0) && spread.withoutValue() == 0 ? State.FINE : State.CAUTION;
    }

    /** The state of a band in a word or two. */
    public static String word(Spread spread) {
        if (spread.band() == null) {
            return spread.measure() == Measure.CRITICAL_DECELERATION ? "Front always first" : "No push gives it";
        }
        if (spread.measure() == Measure.CRITICAL_DECELERATION) {
            return "Rear can come first";
        }
        return beyond(spread.beyondLimit() == null ? 0 : spread.beyondLimit(), spread.measure());
    }

    private static String beyond(double share, Measure measure) {
        String over = measure == Measure.FRONT_SHARE ? "too little" : "over the limit";
        if (share == 0) {
            return measure == Measure.FRONT_SHARE ? "Enough" : "Within the limit";
        }
        return (share <= SELDOM ? "Seldom " : share <= MOST ? "Often " : "Mostly ") + over;
    }

    /** Where nine cars of ten lie, whose doing it is, and how often the limit is passed. */
    public String sentence(Spread spread) {
        Spread.Quantiles band = spread.band();
        if (band == null) {
            return spread.measure() == Measure.CRITICAL_DECELERATION
                    ? "In " + spread.loadCase() + " the front locks first in all cars built like this."
                    : "No push gives the hard stop in any car built like this.";
        }
        String from = value(spread.measure(), band.p05());
        String to = value(spread.measure(), band.p95());
        String range = from.equals(to) ? from : from + " to " + to;
        boolean some = spread.measure() == Measure.CRITICAL_DECELERATION && spread.withoutValue() > 0;
        String which = some
                ? "In 9 of 10 of those cars in which the rear can come first "
                : "In 9 of 10 cars built like this ";
        return which + does(spread, range) + standing(spread) + owner(spread) + "." + limit(spread) + without(spread);
    }

    private String does(Spread spread, String range) {
        return switch (spread.measure()) {
            case EFFORT -> "the pedal needs " + range + " for the hard stop";
            case TRAVEL -> "the pedal goes " + range + " deep in the hard stop";
            case FRONT_SHARE -> "the front does " + range + " of the braking in the hard stop";
            case CRITICAL_DECELERATION -> "with " + spread.loadCase() + " the rear comes first " + above(spread, range);
        };
    }

    /** From which deceleration on the rear comes first; what reads as none at all is every one. */
    private String above(Spread spread, String range) {
        Spread.Quantiles band = Objects.requireNonNull(spread.band());
        String none = value(spread.measure(), 0);
        if (value(spread.measure(), band.p95()).equals(none)) {
            return "at every deceleration";
        }
        return value(spread.measure(), band.p05()).equals(none)
                ? "at every deceleration in the worst of them and only above "
                        + value(spread.measure(), band.p95())
                        + " in the best"
                : "above " + range;
    }

    private String standing(Spread spread) {
        if (spread.nominal() == null) {
            return "";
        }
        String nominal = value(spread.measure(), spread.nominal());
        boolean always =
                spread.measure() == Measure.CRITICAL_DECELERATION && nominal.equals(value(spread.measure(), 0));
        return " (" + (always ? "at every one" : nominal) + " as the file stands)";
    }

    private String owner(Spread spread) {
        if (spread.owners().isEmpty()) {
            return "";
        }
        Owner first = spread.owners().getFirst();
        String part = first.share() > MOST ? "most" : "the largest part";
        return "; " + part + " of that spread comes from " + first.title() + " (" + show.percent(first.share()) + ")";
    }

    private String limit(Spread spread) {
        if (spread.limit() == null || spread.beyondLimit() == null) {
            return "";
        }
        String limit = value(spread.measure(), spread.limit());
        return spread.measure() == Measure.FRONT_SHARE
                ? " It is less than the load on the front asks for " + chance(spread.beyondLimit()) + "."
                : " It is more than the limit of " + limit + " " + chance(spread.beyondLimit()) + ".";
    }

    private String without(Spread spread) {
        if (spread.withoutValue() == 0) {
            return "";
        }
        return spread.measure() == Measure.CRITICAL_DECELERATION
                ? " The front always locks first " + chance(spread.withoutValue()) + "."
                : " No push gives the hard stop " + chance(spread.withoutValue()) + ".";
    }

    /** How often: "in 7 of 100 cars". */
    public String chance(double share) {
        if (share == 0) {
            return "in none of the cars drawn";
        }
        if (share == 1) {
            return "in all of them";
        }
        double hundredths = 100 * share;
        return hundredths < 1
                ? "in fewer than 1 of 100 cars"
                : hundredths > 99 ? "in more than 99 of 100 cars" : "in " + show.fixed(hundredths, 0) + " of 100 cars";
    }

    /** A probability with its standard error, for a table. */
    public String odds(double share, double error) {
        if (share == 0 || share == 1) {
            return share == 0 ? "never" : "always";
        }
        return show.fixed(100 * share, 1) + " ± " + show.fixed(100 * error, 1) + " %";
    }

    /** How the run was done. */
    public static String basis(Tolerance tolerance) {
        return tolerance.samples() + " cars drawn, " + tolerance.inputs().size()
                + " values varied within their ± or their assumed range, seed " + tolerance.seed()
                + ". Values without a ± count as exact.";
    }
}
