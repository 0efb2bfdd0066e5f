package org.brakewright.app.page;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.pedal.PedalState;
import org.brakewright.analysis.pedal.PedalState.AtWork;
import org.brakewright.analysis.pedal.PedalState.StrokePoint;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The pedal through its stroke: a sentence, two curves and a table. */
public final class PedalMaker {
    private final Show show;

    /** In a system of units. */
    public PedalMaker(Show show) {
        this.show = show;
    }

    PedalView of(Assessment assessment) {
        PedalState pedal = assessment.analysis().pedal();
        HardStop stop = assessment.analysis().hardStop();
        return new PedalView(
                sentence(pedal),
                pedal.mechanism()
                        ? chart(
                                pedal,
                                "Pedal ratio through the stroke",
                                "Pad travel over rod travel at each place of the pad; without friction also rod force over pad force.",
                                "pedal ratio",
                                StrokePoint::ratio)
                        : null,
                pedal.mechanism()
                        ? chart(
                                pedal,
                                "Angle of the rod through the stroke",
                                "Angle between rod and master's axis in the pedal's plane, plus when the rod is turned anticlockwise from the axis.",
                                "rod angle, deg",
                                point -> Unit.DEGREE.fromSi(point.rodAngleRad()))
                        : null,
                stop == null ? null : unit().fromSi(stop.point().pedalTravelM()));
    }

    /** The pedal in one or two sentences. */
    public String sentence(PedalState pedal) {
        if (!pedal.mechanism()) {
            return "Only a single ratio is given, " + show.number(pedal.ratioAtRest())
                    + ", and taken to stay the same through the stroke." + across(pedal.atHardStop())
                    + " Give the pedal's points (pedal.mechanism) to see ratio and rod angle change.";
        }
        AtWork work = pedal.atHardStop();
        String atWork = work == null ? "" : ", " + show.number(work.ratio()) + " at the hard stop";
        return "The pedal ratio is " + show.number(pedal.ratioAtRest()) + " at rest" + atWork + " and "
                + show.number(pedal.ratioAtStop()) + " at the pedal's stop." + angles(work);
    }

    private String angles(@Nullable AtWork work) {
        return work == null
                ? ""
                : " At the hard stop the rod leans off the master's axis by " + angle(work.rodAngleRad())
                        + " in the pedal's plane and " + angle(work.rodLeanRad())
                        + " seen from above, which pushes the piston sideways with " + force(work.sideForceN()) + ".";
    }

    private String across(@Nullable AtWork work) {
        return work == null || work.rodLeanRad() == 0
                ? ""
                : " Seen from above the rods lean by " + angle(work.rodLeanRad())
                        + ", which pushes a piston sideways with " + force(work.sideForceN()) + " at the hard stop.";
    }

    private PageView.Chart chart(
            PedalState pedal, String title, String description, String yLabel, ToDoubleFunction<StrokePoint> y) {
        List<Double> travels = pedal.stroke().stream()
                .map(point -> unit().fromSi(point.padTravelM()))
                .toList();
        List<@Nullable Double> values =
                pedal.stroke().stream().map(y::applyAsDouble).toList();
        return new PageView.Chart(
                title,
                description,
                "pad travel, " + unit().symbol(),
                yLabel,
                List.of(new PageView.Series("this pedal", "case_1", travels, values)));
    }

    /** The stroke as a table; null when only a ratio is given. */
    public PageView.@Nullable Table table(PedalState pedal) {
        return pedal.stroke().isEmpty()
                ? null
                : new PageView.Table(
                        "Pedal through its stroke",
                        List.of("pad travel", "ratio", "rod angle", "side force over thrust"),
                        pedal.stroke().stream().map(this::row).toList());
    }

    private List<String> row(StrokePoint point) {
        return List.of(
                show.value(point.padTravelM(), Dimension.LENGTH),
                show.fixed(point.ratio(), 2),
                show.value(point.rodAngleRad(), Dimension.ANGLE),
                show.percent(point.sideShare()));
    }

    private String angle(double radian) {
        return show.value(Math.abs(radian), Dimension.ANGLE);
    }

    private String force(double newton) {
        return show.value(newton, Dimension.FORCE);
    }

    private Unit unit() {
        return show.system().unit(Dimension.LENGTH);
    }
}
