package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.model.Given;
import org.brakewright.model.heat.BrakingEvent;
import org.brakewright.model.heat.BrakingEvents;
import org.brakewright.model.heat.Descent;
import org.brakewright.model.heat.RuleSnubs;
import org.brakewright.model.heat.Schedule;
import org.brakewright.model.heat.SingleStop;
import org.brakewright.model.heat.Snubs;
import org.brakewright.model.heat.SpeedLog;
import org.brakewright.model.resolved.ResolvedSchedule;
import org.brakewright.model.resolved.ResolvedSchedule.Leg;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Turns schedules into legs of evenly changing speed. */
final class ResolveSchedules {
    /** Snubs of UN R13-H type I (read in the text) and of FMVSS 135 S7.13 (from memory): both the same. */
    private static final int RULE_COUNT = 15;

    private static final double RULE_INTERVAL = 45;
    private static final double RULE_DECELERATION = 3.0;
    private static final double RULE_SPEED = 120 / 3.6;
    private static final double RULE_SHARE = 0.8;

    private static final double SAME = 1e-6;

    private final Values values;
    private final double topSpeed;

    ResolveSchedules(Values values, double topSpeed) {
        this.values = values;
        this.topSpeed = topSpeed;
    }

    List<ResolvedSchedule> all(List<Schedule> schedules) {
        List<ResolvedSchedule> all = new ArrayList<>();
        for (int i = 0; i < schedules.size(); i++) {
            String path = "heat.schedules[" + i + "]";
            Schedule schedule = schedules.get(i);
            boolean inGear = schedule instanceof Descent || schedule instanceof SpeedLog;
            all.add(new ResolvedSchedule(schedule.name(), path, inGear, List.copyOf(legs(schedule, path))));
        }
        return List.copyOf(all);
    }

    private List<Leg> legs(Schedule schedule, String path) {
        return switch (schedule) {
            case SingleStop stop -> List.of(brake(values.need(stop.fromSpeed()), 0, values.need(stop.deceleration())));
            case RuleSnubs rule -> ruleSnubs();
            case Snubs snubs -> snubs(snubs);
            case Descent hill -> descent(hill);
            case BrakingEvents events -> events(events, path);
            case SpeedLog log -> new ResolveSpeedLog(values, log, path).legs();
        };
    }

    private List<Leg> ruleSnubs() {
        double from = Math.min(RULE_SHARE * topSpeed, RULE_SPEED);
        return repeated(new Snub(from, from / 2, RULE_DECELERATION), RULE_COUNT, RULE_INTERVAL);
    }

    /** One snub, m/s and m/s2. */
    private record Snub(double from, double to, double deceleration) {
        double duration() {
            return (from - to) / deceleration;
        }
    }

    private List<Leg> snubs(Snubs snubs) {
        Snub snub = new Snub(
                values.need(snubs.fromSpeed()), values.need(snubs.toSpeed()), values.need(snubs.deceleration()));
        if (snub.to() >= snub.from()) {
            slower(snubs.toSpeed(), snubs.fromSpeed());
            return List.of();
        }
        double interval = values.need(snubs.interval());
        if (interval <= snub.duration() + SAME) {
            values.problem(
                    snubs.interval().path(),
                    Values.written(snubs.interval()),
                    "The next snub would begin before this one has ended.",
                    "more than the time of a snub, " + QuantityWriter.write(snub.duration(), Unit.SECOND));
            return List.of();
        }
        return repeated(snub, whole(snubs.count()), interval);
    }

    /** Braked; then back to speed over half the time that is left, held for the other half. */
    private static List<Leg> repeated(Snub snub, int count, double interval) {
        List<Leg> legs = new ArrayList<>();
        double half = 0.5 * (interval - snub.duration());
        for (int i = 0; i < count; i++) {
            legs.add(brake(snub.from(), snub.to(), snub.deceleration()));
            if (i < count - 1) {
                legs.add(new Leg(half, snub.to(), snub.from(), 0));
                legs.add(new Leg(half, snub.from(), snub.from(), 0));
            }
        }
        return legs;
    }

    private List<Leg> descent(Descent hill) {
        double speed = values.need(hill.speed());
        return List.of(new Leg(values.need(hill.length()) / speed, speed, speed, values.need(hill.grade())));
    }

    private List<Leg> events(BrakingEvents events, String path) {
        int laps = events.laps() == null ? 1 : whole(events.laps());
        Given lapTime = events.lapTime();
        if (laps > 1 && lapTime == null) {
            values.problem(path + ".lap_time", "", "More than one lap needs the time of a lap.", "a time such as 95 s");
            return List.of();
        }
        List<Leg> lap = lap(events.events(), laps > 1 ? lapTime : null);
        List<Leg> all = new ArrayList<>();
        for (int i = 0; i < laps; i++) {
            all.addAll(lap);
        }
        return all;
    }

    private List<Leg> lap(List<BrakingEvent> events, @Nullable Given lapTime) {
        List<Leg> legs = new ArrayList<>();
        double time = 0;
        double speed = values.need(events.getFirst().fromSpeed());
        for (BrakingEvent event : events) {
            double start = values.need(event.start());
            double from = values.need(event.fromSpeed());
            double to = values.need(event.toSpeed());
            if (to >= from) {
                slower(event.toSpeed(), event.fromSpeed());
                return List.of();
            }
            if (start < time - SAME) {
                values.problem(
                        event.start().path(),
                        Values.written(event.start()),
                        "This event begins before the one above has ended: events stand in the order in which they happen.",
                        "not before the end of the event above, at " + QuantityWriter.write(time, Unit.SECOND));
                return List.of();
            }
            add(legs, start - time, speed, from);
            Leg braked = brake(from, to, values.need(event.deceleration()));
            legs.add(braked);
            time = start + braked.duration();
            speed = to;
        }
        if (lapTime != null) {
            closeLap(legs, lapTime, time, speed, values.need(events.getFirst().fromSpeed()));
        }
        return legs;
    }

    private void closeLap(List<Leg> legs, Given lapTime, double time, double speed, double first) {
        double whole = values.need(lapTime);
        if (whole < time - SAME) {
            values.problem(
                    lapTime.path(),
                    Values.written(lapTime),
                    "The lap ends before its last braking event.",
                    "more than the end of the last event");
        }
        add(legs, whole - time, speed, first);
    }

    private static void add(List<Leg> legs, double duration, double from, double to) {
        if (duration > SAME) {
            legs.add(new Leg(duration, from, to, 0));
        }
    }

    private static Leg brake(double from, double to, double deceleration) {
        return new Leg((from - to) / deceleration, from, to, 0);
    }

    private int whole(Given count) {
        double value = values.need(count);
        if (value != Math.rint(value)) {
            values.problem(count.path(), Values.written(count), "A part of one cannot be driven.", "a whole number");
        }
        return (int) Math.max(1, Math.rint(value));
    }

    private void slower(Given to, Given from) {
        values.problem(
                to.path(),
                Values.written(to),
                "Braking does not make the car faster.",
                "less than from_speed, " + Values.written(from));
    }
}
