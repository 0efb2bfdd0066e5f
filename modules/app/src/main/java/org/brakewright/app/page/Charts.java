package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.ForceDiagram;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Charts as numbers in the units shown. */
final class Charts {
    private static final double DIAGRAM_FRONT = 1.0;
    private static final double DIAGRAM_REAR = 0.5;

    private final Show show;
    private final Assessment assessment;

    Charts(Show show, Assessment assessment) {
        this.show = show;
        this.assessment = assessment;
    }

    PageView.Chart effort() {
        Unit unit = show.system().unit(Dimension.FORCE);
        return overDeceleration(
                "Pedal effort",
                "Pedal effort over deceleration for each load case, with the effort aimed at.",
                "pedal effort, " + unit.symbol(),
                point -> unit.fromSi(point.pedalForceN()),
                unit.fromSi(assessment.resolved().aims().mostEffort()));
    }

    PageView.Chart travel() {
        Unit unit = show.system().unit(Dimension.LENGTH);
        return overDeceleration(
                "Pedal travel",
                "Pedal travel over deceleration for each load case, with the travel aimed at.",
                "pedal travel, " + unit.symbol(),
                point -> unit.fromSi(point.pedalTravelM()),
                unit.fromSi(assessment.resolved().aims().mostTravel()));
    }

    private PageView.Chart overDeceleration(
            String title, String description, String yLabel, Function<OperatingPoint, Double> y, double aim) {
        List<PageView.Series> series = new ArrayList<>();
        int number = 1;
        for (LoadCaseResult result : assessment.analysis().loadCases()) {
            series.add(series(result.name(), "case_" + Math.min(number++, 4), result, y));
        }
        series.add(new PageView.Series("aim", "limit", List.of(0.1, 1.2), List.of(aim, aim)));
        return new PageView.Chart(title, description, "deceleration, g", yLabel, List.copyOf(series));
    }

    PageView.Chart adhesion(LoadCaseResult result) {
        return new PageView.Chart(
                "Grip used",
                "Grip that each axle uses over deceleration. The axle with the higher curve locks first; on the diagonal both use just as much.",
                "deceleration, g",
                "grip used",
                List.of(
                        series("front", "front", result, OperatingPoint::frontAdhesion),
                        series("rear", "rear", result, OperatingPoint::rearAdhesion),
                        new PageView.Series("ideal", "ideal", List.of(0.1, 1.2), List.of(0.1, 1.2))));
    }

    private static PageView.Series series(
            String label, String style, LoadCaseResult result, Function<OperatingPoint, @Nullable Double> y) {
        List<Double> xs = new ArrayList<>();
        List<@Nullable Double> ys = new ArrayList<>();
        for (OperatingPoint point : result.atDeceleration()) {
            xs.add(point.decelerationG());
            ys.add(y.apply(point));
        }
        return new PageView.Series(label, style, xs, ys);
    }

    PageView.ForceChart force(ForceDiagram diagram) {
        List<PageView.DecelerationLine> lines = new ArrayList<>();
        for (int tenths = 2; tenths <= 12; tenths += 2) {
            lines.add(new PageView.DecelerationLine(show.number(tenths / 10.0) + " g", tenths / 10.0));
        }
        return new PageView.ForceChart(
                "Rear against front brake force",
                "Rear brake force over front brake force, both over the car's weight. Where the installed curve lies above the ideal one, the rear locks first.",
                "front brake force over weight",
                "rear brake force over weight",
                DIAGRAM_FRONT,
                DIAGRAM_REAR,
                diagram.ideal().stream().map(Charts::xy).toList(),
                diagram.installed().stream().map(Charts::xy).toList(),
                diagram.gripLines().stream().map(this::gripLine).toList(),
                lines);
    }

    private PageView.GripLine gripLine(ForceDiagram.GripLine line) {
        boolean front = line.axle() == Lock.Axle.FRONT;
        return new PageView.GripLine(
                (front ? "front locks, grip " : "rear locks, grip ") + show.number(line.grip()),
                front ? "front" : "rear",
                xy(line.from()),
                xy(line.to()));
    }

    private static PageView.XY xy(ForceDiagram.Point point) {
        return new PageView.XY(point.front(), point.rear());
    }
}
