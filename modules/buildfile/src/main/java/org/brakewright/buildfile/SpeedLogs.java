package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.model.Build;
import org.brakewright.model.Problem;
import org.brakewright.model.heat.Heat;
import org.brakewright.model.heat.LogFile;
import org.brakewright.model.heat.Recording;
import org.brakewright.model.heat.Schedule;
import org.brakewright.model.heat.SpeedLog;
import org.brakewright.model.heat.SpeedPoint;
import org.jspecify.annotations.Nullable;

/** Fills the speed logs of a build from the files that it names. */
final class SpeedLogs {
    private static final String EITHER = "points, or a file with its name";

    private final Beside beside;
    private final Places places;
    private final Faults faults;

    SpeedLogs(Beside beside, Places places, Faults faults) {
        this.beside = beside;
        this.places = places;
        this.faults = faults;
    }

    Build fill(Build build) {
        Heat heat = build.heat();
        if (heat == null || heat.schedules().stream().noneMatch(SpeedLog.class::isInstance)) {
            return build;
        }
        List<Schedule> filled = new ArrayList<>();
        for (int i = 0; i < heat.schedules().size(); i++) {
            Schedule schedule = heat.schedules().get(i);
            filled.add(schedule instanceof SpeedLog log ? fill(log, Paths.item("heat.schedules", i)) : schedule);
        }
        return build.with(heat.with(List.copyOf(filled)));
    }

    private SpeedLog fill(SpeedLog log, String path) {
        List<SpeedPoint> points = log.points();
        LogFile file = log.file();
        boolean drawn = points != null && !points.isEmpty();
        if (drawn == (file != null)) {
            String message = drawn
                    ? "`" + path + "` has points and a file: which of them was driven?"
                    : "`" + path + "` has neither points nor a file, so nothing was driven";
            faults.add(places.at(path), new Problem(path, "", message, EITHER));
        } else if (file != null) {
            Recording recording = read(file, Paths.child(path, "file"));
            return new SpeedLog(log.name(), points, file, log.noise(), recording);
        }
        return log;
    }

    private @Nullable Recording read(LogFile file, String path) {
        return switch (beside.find(file.name())) {
            case Beside.Found.Missing missing -> {
                String at = Paths.child(path, "name");
                String allowed = "the name of a CSV file in the folder of the build file, or in a folder there";
                faults.add(places.at(at), new Problem(at, file.name(), missing.why(), allowed));
                yield null;
            }
            case Beside.Found.There found -> {
                LogReader reader = new LogReader(file);
                Recording recording = reader.read(found.bytes());
                reader.faults().forEach(fault -> faults.add(places.at(path), fault.at(path, file.name())));
                yield recording;
            }
        };
    }
}
