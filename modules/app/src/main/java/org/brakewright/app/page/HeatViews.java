package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.analysis.heat.HeatSample;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.ScheduleHeat;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedHeat;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** How hot the brakes get, as a table and as temperatures over time. */
public final class HeatViews {
    private static final double MINUTE = 60;

    private static final String NOTE =
            "Cooling follows published correlations whose branches do not meet; where they change over they are blended, and either "
                    + "branch may be off by a quarter. Temperatures are means of the iron, of both linings and of the fluid of one wheel; "
                    + "the rubbed face is told in the table. After each schedule the car stands for half an hour.";

    private final Show show;

    /** The views in a system of units. */
    public HeatViews(Show show) {
        this.show = show;
    }

    /** Table, charts and what to know about them; null when no schedule is given. */
    public PageView.@Nullable OverTime of(Assessment assessment) {
        PageView.Table table = table(assessment);
        HeatState heat = assessment.analysis().heat();
        if (table == null || heat == null) {
            return null;
        }
        ResolvedHeat built = assessment.resolved().heat().orElseThrow();
        return new PageView.OverTime(
                NOTE,
                table,
                heat.schedules().stream().map(each -> chart(each, built)).toList());
    }

    /** One row a schedule and axle; null when no schedule is given. */
    public PageView.@Nullable Table table(Assessment assessment) {
        HeatState heat = assessment.analysis().heat();
        if (heat == null) {
            return null;
        }
        List<List<String>> rows = new ArrayList<>();
        for (ScheduleHeat schedule : heat.schedules()) {
            rows.add(row(schedule.name(), "front", schedule, schedule.front()));
            rows.add(row(schedule.name(), "rear", schedule, schedule.rear()));
        }
        heat.unsolved().forEach(name -> rows.add(List.of(name, "", "could not be followed", "", "", "", "", "", "")));
        return new PageView.Table(
                "Heat, from " + temperature(heat.ambientK()) + ", loaded as \"" + heat.loadCase() + "\"",
                List.of(
                        "schedule",
                        "axle",
                        "face",
                        "mean",
                        "linings",
                        "fluid",
                        "fluid peaks",
                        "force left",
                        "cold again after"),
                List.copyOf(rows));
    }

    private List<String> row(String name, String axle, ScheduleHeat schedule, AxleHeat heat) {
        return List.of(
                name,
                axle,
                temperature(heat.facePeakK()),
                temperature(heat.rotorPeakK()),
                temperature(heat.liningPeakK()),
                temperature(heat.fluidPeakK()),
                minutes(heat.fluidPeakS()),
                show.percent(heat.leastForceShare()) + (heat.beyondCurve() ? ", beyond the curve" : ""),
                cooled(schedule));
    }

    private String cooled(ScheduleHeat schedule) {
        Double time = schedule.coolingTimeS();
        return time == null ? "more than 2 h" : minutes(time);
    }

    private String minutes(double seconds) {
        return show.fixed(seconds / MINUTE, 1) + " min";
    }

    private PageView.Chart chart(ScheduleHeat schedule, ResolvedHeat built) {
        Unit unit = show.system().unit(Dimension.TEMPERATURE);
        List<PageView.Series> series = new ArrayList<>(List.of(
                series("front rotor", "front", schedule, HeatSample::frontRotorK),
                series("rear rotor", "rear", schedule, HeatSample::rearRotorK),
                series("front linings", "case_5", schedule, HeatSample::frontLiningK),
                series("rear linings", "case_6", schedule, HeatSample::rearLiningK),
                series("front fluid", "case_3", schedule, HeatSample::frontFluidK),
                series("rear fluid", "case_4", schedule, HeatSample::rearFluidK)));
        double end = schedule.samples().getLast().timeS() / MINUTE;
        double limit = unit.fromSi(built.front().lining().limit());
        series.add(
                new PageView.Series("limit of the front linings", "limit", List.of(0.0, end), List.of(limit, limit)));
        return new PageView.Chart(
                "Temperatures: " + schedule.name(),
                "Temperature of rotors, linings and fluid over time through the schedule and half an hour of standing after it.",
                "time, min",
                "temperature, " + unit.symbol(),
                List.copyOf(series));
    }

    private PageView.Series series(
            String label, String style, ScheduleHeat schedule, ToDoubleFunction<HeatSample> kelvin) {
        Unit unit = show.system().unit(Dimension.TEMPERATURE);
        List<Double> x = new ArrayList<>();
        List<@Nullable Double> y = new ArrayList<>();
        for (HeatSample sample : schedule.samples()) {
            x.add(sample.timeS() / MINUTE);
            y.add(unit.fromSi(kelvin.applyAsDouble(sample)));
        }
        return new PageView.Series(label, style, x, y);
    }

    private String temperature(double kelvin) {
        return show.value(kelvin, Dimension.TEMPERATURE);
    }
}
