package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Load cases as the page shows them, with the texts beside the chain's parts at each deceleration. */
final class LoadCases {
    private final Show show;
    private final Charts charts;
    private final Tables tables;

    LoadCases(Show show, Charts charts, Tables tables) {
        this.show = show;
        this.charts = charts;
        this.tables = tables;
    }

    List<PageView.LoadCase> of(Assessment assessment) {
        List<PageView.LoadCase> cases = new ArrayList<>();
        for (int i = 0; i < assessment.analysis().loadCases().size(); i++) {
            LoadCaseResult result = assessment.analysis().loadCases().get(i);
            cases.add(new PageView.LoadCase(
                    result.name(),
                    show.value(result.massKg(), Dimension.MASS) + ", centre of gravity "
                            + show.value(result.cgHeightM(), Dimension.LENGTH) + " up",
                    lockSentence(result),
                    result.atDeceleration().stream()
                            .map(point -> point(assessment, point))
                            .toList(),
                    charts.force(assessment.analysis().forceDiagrams().get(i)),
                    charts.adhesion(result),
                    tables.locks(result),
                    tables.points(result)));
        }
        return List.copyOf(cases);
    }

    private String lockSentence(LoadCaseResult result) {
        Lock lock = result.gripLock();
        if (lock == null) {
            return "No push locks a wheel at the car's grip.";
        }
        String axle = switch (lock.axle()) {
            case FRONT -> "the front wheels lock first";
            case REAR -> "the rear wheels lock first";
            case BOTH -> "all wheels lock together";
        };
        return "On a grip of " + show.number(lock.grip()) + " " + axle + ", at " + g(lock.decelerationG()) + ": "
                + show.percent(lock.efficiency()) + " of the grip is used.";
    }

    private PageView.Point point(Assessment assessment, OperatingPoint point) {
        return new PageView.Point(
                point.decelerationG(),
                g(point.decelerationG()),
                point.withinTravel(),
                Math.toDegrees(point.barTiltRad()),
                texts(assessment, point));
    }

    private Map<String, List<String>> texts(Assessment assessment, OperatingPoint point) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        texts.put("foot", List.of(force(point.pedalForceN()), length(point.pedalTravelM()) + " down"));
        texts.put("pedal", List.of("ratio " + show.number(assessment.analysis().pedalRatio())));
        switch (assessment.resolved().apply()) {
            case ResolvedApply.Twin twin -> {
                bar(assessment).ifPresent(bar -> texts.put("bar", List.of(show.percent(bar.frontShare()) + " front")));
                texts.put("front_master", master(twin.front().bore(), point.frontStrokeM()));
                texts.put("rear_master", master(twin.rear().bore(), point.rearStrokeM()));
            }
            case ResolvedApply.Tandem tandem -> {
                tandem.booster()
                        .ifPresent(boost -> texts.put("booster", List.of("ratio " + show.number(boost.ratio()))));
                texts.put("front_master", master(tandem.master().bore(), point.frontStrokeM()));
                texts.put("rear_master", List.of(length(point.rearStrokeM()) + " stroke"));
            }
        }
        assessment
                .resolved()
                .apply()
                .valve()
                .ifPresent(valve -> texts.put("valve", List.of("knee " + pressure(valve.knee()))));
        texts.put("front_line", List.of(pressure(point.frontPressurePa())));
        texts.put("rear_line", List.of(pressure(point.rearPressurePa())));
        texts.put("front_brake", List.of(force(point.frontForceN())));
        texts.put("rear_brake", List.of(force(point.rearForceN())));
        texts.put("front_tyre", List.of(grip(point.frontAdhesion())));
        texts.put("rear_tyre", List.of(grip(point.rearAdhesion())));
        return texts;
    }

    private static Optional<BarState> bar(Assessment assessment) {
        return Optional.ofNullable(assessment.analysis().bar());
    }

    private List<String> master(double bore, double stroke) {
        return List.of(show.bore(bore), length(stroke) + " stroke");
    }

    private String grip(@Nullable Double adhesion) {
        return adhesion == null ? "off the ground" : "uses grip " + show.number(adhesion);
    }

    private String force(double newton) {
        return show.value(newton, Dimension.FORCE);
    }

    private String length(double metre) {
        return show.value(metre, Dimension.LENGTH);
    }

    private String pressure(double pascal) {
        return show.value(pascal, Dimension.PRESSURE);
    }

    private String g(double decelerationG) {
        return show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
