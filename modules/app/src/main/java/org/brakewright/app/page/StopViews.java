package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.stop.Stop;
import org.brakewright.analysis.stop.StopKind;
import org.brakewright.analysis.stop.StopSample;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Stops followed over time, as a table, as speed over time, and as the slip of the wheels in the panic push. */
public final class StopViews {
    private static final String NOTE =
            "The push rises in a straight line and is then held, clutch pressed, wheel straight, no anti-lock. Tyres follow one slip curve on all "
                    + "wheels; locked, they hold less. The mean fully developed deceleration is that of UN R13-H, between 0.8 and 0.1 of the speed "
                    + "at the start. Discs and drums begin at the temperature of the air and warm up by the work of their brakes, a locked wheel's not at all; "
                    + "friction stays that of the working brake.";

    private static final List<String> STYLES = List.of("front", "rear", "case_1", "case_2", "case_3");

    private final Show show;

    /** The views in a system of units. */
    public StopViews(Show show) {
        this.show = show;
    }

    /** Table, charts and what to know about them; null when no stops are followed. */
    public PageView.@Nullable OverTime of(List<Stop> stops) {
        PageView.Table table = table(stops);
        if (table == null) {
            return null;
        }
        Map<String, List<Stop>> byLoad =
                stops.stream().collect(Collectors.groupingBy(Stop::loadCase, LinkedHashMap::new, Collectors.toList()));
        List<PageView.Chart> charts = new ArrayList<>();
        byLoad.forEach((load, all) -> charts.add(speeds(load, all)));
        stops.stream()
                .filter(stop -> stop.kind() == StopKind.PANIC)
                .map(this::slips)
                .forEach(charts::add);
        byLoad.values().forEach(all -> charts.addAll(rotors(all)));
        return new PageView.OverTime(NOTE, table, List.copyOf(charts));
    }

    /** One row a stop; null when no stops are followed. */
    public PageView.@Nullable Table table(List<Stop> stops) {
        if (stops.isEmpty()) {
            return null;
        }
        return new PageView.Table(
                "Stops followed over time, from " + show.value(stops.getFirst().speedMS(), Dimension.SPEED),
                List.of(
                        "loaded as",
                        "stop",
                        "grip",
                        "push",
                        "distance",
                        "time",
                        "MFDD",
                        "locks first",
                        "front locks",
                        "rear locks",
                        "rotors, front and rear",
                        "steady reckoning"),
                stops.stream().map(this::row).toList());
    }

    private List<String> row(Stop stop) {
        return List.of(
                stop.loadCase(),
                stop.kind().words(),
                show.number(stop.grip()),
                show.value(stop.pedalForceN(), Dimension.FORCE),
                distance(stop),
                stop.ending() == Stop.Ending.AT_REST ? seconds(stop.timeS()) : "not at rest",
                stop.mfddMS2() == null ? "-" : show.fixed(stop.mfddMS2() / Gravity.STANDARD, 2) + " g",
                axle(stop.first()),
                lock(stop.frontLockS()),
                lock(stop.rearLockS()),
                rotors(stop.samples().getLast()),
                reckoned(stop));
    }

    /** What the steady reckoning says of this push; the axle that it names locks only when the push is large enough. */
    private static String reckoned(Stop stop) {
        Double needed = stop.quasiStaticLockN();
        boolean locks = needed != null && needed <= stop.pedalForceN();
        return axle(locks ? stop.quasiStatic() : null)
                + switch (stop.comparison()) {
                    case SAME -> "";
                    case TOO_CLOSE -> " (too close to tell)";
                    case DIFFERS -> " (differs)";
                };
    }

    private String distance(Stop stop) {
        String way =
                show.value(stop.distanceM(), Dimension.LENGTH, show.system() == UnitSystem.US ? Unit.FOOT : Unit.METRE);
        return stop.ending() == Stop.Ending.AT_REST ? way : "more than " + way;
    }

    private String lock(@Nullable Double time) {
        return time == null ? "turns" : seconds(time);
    }

    private String seconds(double time) {
        return show.fixed(time, 2) + " s";
    }

    private String rotors(StopSample end) {
        Double front = end.frontRotorK();
        Double rear = end.rearRotorK();
        return front == null || rear == null
                ? "-"
                : show.value(front, Dimension.TEMPERATURE) + ", " + show.value(rear, Dimension.TEMPERATURE);
    }

    private static String axle(Lock.@Nullable Axle axle) {
        return switch (axle) {
            case null -> "none";
            case FRONT -> "front";
            case REAR -> "rear";
            case BOTH -> "both";
        };
    }

    private PageView.Chart speeds(String load, List<Stop> stops) {
        Unit unit = show.system().unit(Dimension.SPEED);
        List<PageView.Series> series = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            series.add(series(stop.kind().words(), STYLES.get(i), stop, sample -> unit.fromSi(sample.speedMS())));
        }
        return new PageView.Chart(
                "Speed over time, loaded as \"" + load + "\"",
                "Speed of the car from the first movement of the pedal to rest, one line a stop.",
                "time, s",
                "speed, " + unit.symbol(),
                List.copyOf(series));
    }

    private PageView.Chart slips(Stop stop) {
        return new PageView.Chart(
                "Slip of the wheels in the panic push, loaded as \"" + stop.loadCase() + "\"",
                "Slip of front and rear wheels over time: 0 rolls freely, 1 is locked.",
                "time, s",
                "slip",
                List.of(
                        series("front wheels", "front", stop, sample -> Math.max(0, sample.frontSlip())),
                        series("rear wheels", "rear", stop, sample -> Math.max(0, sample.rearSlip()))));
    }

    /** The stop that heats a rotor most; none when the brakes' heat is not known. */
    private List<PageView.Chart> rotors(List<Stop> stops) {
        return stops.stream()
                .filter(stop -> stop.frontRotorRiseK() != null && stop.rearRotorRiseK() != null)
                .max(Comparator.comparingDouble(StopViews::rise))
                .map(this::temperatures)
                .stream()
                .toList();
    }

    private static double rise(Stop stop) {
        return Math.max(Objects.requireNonNull(stop.frontRotorRiseK()), Objects.requireNonNull(stop.rearRotorRiseK()));
    }

    private PageView.Chart temperatures(Stop stop) {
        Unit unit = show.system().unit(Dimension.TEMPERATURE);
        return new PageView.Chart(
                "Discs or drums in the stop that heats one most: " + stop.kind().words() + ", loaded as \""
                        + stop.loadCase() + "\"",
                "Mean temperature of one front and one rear disc or drum over time, from the temperature of the air on.",
                "time, s",
                "temperature, " + unit.symbol(),
                List.of(
                        series("front rotor", "front", stop, sample -> warmth(unit, sample.frontRotorK())),
                        series("rear rotor", "rear", stop, sample -> warmth(unit, sample.rearRotorK()))));
    }

    private static double warmth(Unit unit, @Nullable Double kelvin) {
        return unit.fromSi(Objects.requireNonNull(kelvin));
    }

    private static PageView.Series series(String label, String style, Stop stop, ToDoubleFunction<StopSample> value) {
        List<Double> x = new ArrayList<>();
        List<@Nullable Double> y = new ArrayList<>();
        for (StopSample sample : stop.samples()) {
            x.add(sample.timeS());
            y.add(value.applyAsDouble(sample));
        }
        return new PageView.Series(label, style, x, y);
    }
}
