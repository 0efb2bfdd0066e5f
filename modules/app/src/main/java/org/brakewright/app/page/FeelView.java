package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.brakewright.analysis.feel.Feel;
import org.brakewright.analysis.feel.FeelCurve;
import org.brakewright.analysis.feel.FeelCurve.End;
import org.brakewright.analysis.feel.FeelPoint;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Pedal force against travel as the page draws it, and in words. */
public final class FeelView {
    /** Steps of the table: N, and lbf by 10. */
    private static final double STEP_METRIC = 50;

    private static final double STEP_US = 10 * 4.4482216152605;
    private static final int SHARES_TOLD = 3;

    private final Show show;
    private final Unit force;
    private final Unit length;

    /** Shows in the units of a person. */
    public FeelView(Show show) {
        this.show = show;
        this.force = show.system().unit(Dimension.FORCE);
        this.length = show.system().unit(Dimension.LENGTH);
    }

    /** The page's drawing. */
    PageView.FeelChart chart(Assessment assessment) {
        Feel feel = assessment.feel();
        double stop = length.fromSi(assessment.resolved().pedal().travelToStop());
        List<PageView.Series> series = new ArrayList<>(List.of(
                series("firm", "case_2", feel.firm()),
                series("as assumed", "case_1", feel.asAssumed()),
                series("soft", "case_3", feel.soft())));
        double most = series.stream()
                .flatMap(one -> one.y().stream())
                .mapToDouble(value -> value == null ? 0 : value)
                .max()
                .orElse(0);
        if (feel.hardStopForceN() != null) {
            double there = force.fromSi(feel.hardStopForceN());
            series.add(new PageView.Series("hard stop", "limit", List.of(0.0, stop), List.of(there, there)));
        }
        series.add(new PageView.Series("pedal's stop", "ideal", List.of(stop, stop), List.of(0.0, most)));
        PageView.Chart chart = new PageView.Chart(
                "Force against travel",
                String.join(" ", sentences(assessment)),
                "pedal travel, " + length.symbol(),
                "pedal force, " + force.symbol(),
                List.copyOf(series));
        return new PageView.FeelChart(chart, marks(feel), table(feel));
    }

    /** Two or three sentences: the travel at the hard stop, what owns the difference, what ends a curve early. */
    public List<String> sentences(Assessment assessment) {
        Feel feel = assessment.feel();
        List<String> sentences = new ArrayList<>();
        if (feel.hardStopForceN() == null) {
            sentences.add("No push gives the hard stop, so no travel is told there.");
        } else {
            sentences.add("At the hard stop (" + show.value(feel.hardStopForceN(), Dimension.FORCE)
                    + ") the pedal travels "
                    + travel(feel.firm()) + " firm, " + travel(feel.asAssumed()) + " as assumed, " + travel(feel.soft())
                    + " soft.");
            sentences.add(difference(feel));
        }
        Stream.of(ended("firm", feel.firm()), ended("as assumed", feel.asAssumed()), ended("soft", feel.soft()))
                .filter(sentence -> !sentence.isEmpty())
                .forEach(sentences::add);
        return List.copyOf(sentences);
    }

    private String travel(FeelCurve curve) {
        return curve.travelAtHardStopM() == null ? "-" : show.value(curve.travelAtHardStopM(), Dimension.LENGTH);
    }

    private String difference(Feel feel) {
        List<String> shares = feel.firmToSoft().stream()
                .filter(share -> share.padTravelM() > 0)
                .limit(SHARES_TOLD)
                .map(share -> Tables.label(share) + " " + show.value(share.padTravelM(), Dimension.LENGTH))
                .toList();
        return shares.isEmpty()
                ? "Nothing that gives travel is uncertain."
                : "From firm to soft most is owned by " + String.join(", ", shares) + ".";
    }

    private String ended(String name, FeelCurve curve) {
        FeelPoint last = curve.points().getLast();
        return curve.end() == End.FORCE
                ? ""
                : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + ", " + words(curve.end()) + " at "
                        + show.value(last.pedalForceN(), Dimension.FORCE) + " and "
                        + show.value(last.padTravelM(), Dimension.LENGTH) + ".";
    }

    private static String words(End end) {
        return switch (end) {
            case FORCE -> "nothing ends the curve";
            case PEDAL_STOP -> "the pedal meets its stop";
            case FRONT_MASTER -> "the front master bottoms";
            case REAR_MASTER -> "the rear master bottoms";
            case OVER_CENTRE -> "the pedal goes over centre";
        };
    }

    private PageView.Series series(String label, String style, FeelCurve curve) {
        List<Double> x = new ArrayList<>(List.of(0.0));
        List<@Nullable Double> y = new ArrayList<>();
        y.add(0.0);
        for (FeelPoint point : curve.points()) {
            x.add(length.fromSi(point.padTravelM()));
            y.add(force.fromSi(point.pedalForceN()));
        }
        return new PageView.Series(label, style, x, y);
    }

    private List<PageView.FeelMark> marks(Feel feel) {
        List<PageView.FeelMark> marks = new ArrayList<>();
        marks(marks, feel.firm());
        marks(marks, feel.asAssumed());
        marks(marks, feel.soft());
        return List.copyOf(marks);
    }

    private void marks(List<PageView.FeelMark> marks, FeelCurve curve) {
        if (curve.end() != End.FORCE) {
            marks.add(mark("end", words(curve.end()), curve.points().getLast()));
        }
        if (curve.runOut() != null) {
            marks.add(mark("run_out", "booster runs out", curve.runOut()));
        }
    }

    private PageView.FeelMark mark(String kind, String label, FeelPoint point) {
        return new PageView.FeelMark(kind, label, length.fromSi(point.padTravelM()), force.fromSi(point.pedalForceN()));
    }

    private PageView.Table table(Feel feel) {
        double step = show.system() == UnitSystem.US ? STEP_US : STEP_METRIC;
        double most = Stream.of(feel.firm(), feel.asAssumed(), feel.soft())
                .mapToDouble(curve -> curve.points().getLast().pedalForceN())
                .max()
                .orElse(0);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i * step <= most; i++) {
            double pushed = i * step;
            rows.add(List.of(
                    show.value(pushed, Dimension.FORCE),
                    cell(feel.firm(), pushed),
                    cell(feel.asAssumed(), pushed),
                    cell(feel.soft(), pushed)));
        }
        return new PageView.Table(
                "Pedal travel at each force", List.of("force", "firm", "as assumed", "soft"), List.copyOf(rows));
    }

    private String cell(FeelCurve curve, double pushed) {
        Double travel = curve.travelAt(pushed);
        return travel == null ? words(curve.end()) : show.value(travel, Dimension.LENGTH);
    }
}
