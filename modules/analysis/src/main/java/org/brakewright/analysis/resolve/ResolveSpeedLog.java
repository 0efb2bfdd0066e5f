package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.kernel.statistics.Bends;
import org.brakewright.model.Given;
import org.brakewright.model.heat.Recording;
import org.brakewright.model.heat.Recording.Sample;
import org.brakewright.model.heat.SpeedLog;
import org.brakewright.model.heat.SpeedPoint;
import org.brakewright.model.resolved.ResolvedSchedule.Leg;
import org.jspecify.annotations.Nullable;

/** Turns a speed log, drawn by hand or recorded by a logger, into legs of evenly changing speed. */
final class ResolveSpeedLog {
    private final Values values;
    private final SpeedLog log;
    private final String path;

    ResolveSpeedLog(Values values, SpeedLog log, String path) {
        this.values = values;
        this.log = log;
        this.path = path;
    }

    List<Leg> legs() {
        Recording recording = log.recording();
        List<SpeedPoint> points = log.points();
        if (recording != null) {
            double noise = values.take(log.noise(), path + ".noise", HeatDefaults.LOG_NOISE);
            return legs(recording.samples(), noise);
        }
        if (points == null || points.isEmpty()) {
            values.problem(path, "", "This log has no points, and no file that was read.", "points, or a file");
            return List.of();
        }
        List<Sample> samples = drawn(points);
        Given noise = log.noise();
        return samples.size() < points.size() ? List.of() : legs(samples, noise == null ? 0 : values.need(noise));
    }

    /** The points as long as they could have been driven one after the other. */
    private List<Sample> drawn(List<SpeedPoint> points) {
        if (points.size() < 2) {
            values.problem(
                    points.getFirst().time().path(), "", "A log of one point tells nothing.", "two points at least");
            return List.of();
        }
        List<Sample> samples = new ArrayList<>();
        @Nullable SpeedPoint before = null;
        for (SpeedPoint point : points) {
            if (before == null || follows(point.time(), before.time())) {
                samples.add(new Sample(values.need(point.time()), values.need(point.speed())));
            }
            before = point;
        }
        return samples;
    }

    private boolean follows(Given time, Given before) {
        double step = values.need(time) - values.need(before);
        if (step <= 0) {
            values.problem(
                    time.path(),
                    Values.written(time),
                    "The points of the log are not in the order of time.",
                    "later than the point before");
        } else if (step > Recording.LONGEST_GAP) {
            values.problem(
                    time.path(),
                    Values.written(time),
                    "The log has a gap: nobody knows what happened in it.",
                    "at most 5 s after the point before");
        }
        return step > 0 && step <= Recording.LONGEST_GAP;
    }

    private static List<Leg> legs(List<Sample> samples, double noise) {
        double[] times = samples.stream().mapToDouble(Sample::time).toArray();
        double[] speeds = samples.stream().mapToDouble(Sample::speed).toArray();
        int[] bends = Bends.of(times, speeds, noise);
        List<Leg> legs = new ArrayList<>();
        for (int i = 1; i < bends.length; i++) {
            int from = bends[i - 1];
            int to = bends[i];
            legs.add(new Leg(times[to] - times[from], speeds[from], speeds[to], 0));
        }
        return legs;
    }
}
