package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.parking.ForceForGrade;
import org.brakewright.analysis.parking.GradeHeld;
import org.brakewright.analysis.parking.ParkedCase;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.app.words.Show;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** What the parking brake holds, in a table. */
public final class ParkingTable {
    private final Show show;

    /** The table in a system of units. */
    public ParkingTable(Show show) {
        this.show = show;
    }

    /** One row a load case; null when no parking brake is given. */
    public PageView.@Nullable Table of(Analysis analysis) {
        ParkingState parking = analysis.parking();
        if (parking == null) {
            return null;
        }
        List<String> columns = new ArrayList<>(List.of("load case", "nose up", "nose down"));
        for (ForceForGrade force : parking.loadCases().getFirst().forceFor()) {
            columns.add("takes on " + show.percent(force.grade()));
        }
        columns.add("slows at");
        return new PageView.Table(
                caption(parking),
                List.copyOf(columns),
                parking.loadCases().stream().map(this::row).toList());
    }

    private String caption(ParkingState parking) {
        String axle = parking.axle().name().toLowerCase(Locale.ROOT);
        return "Parking brake on the " + axle + " wheels: grades held with "
                + show.value(parking.driverForceN(), Dimension.FORCE) + " at the control, "
                + show.value(parking.noseUp().torqueNM(), Dimension.TORQUE) + " a wheel nose up and "
                + show.value(parking.noseDown().torqueNM(), Dimension.TORQUE) + " nose down";
    }

    private List<String> row(ParkedCase loadCase) {
        List<String> row = new ArrayList<>();
        row.add(loadCase.name());
        row.add(held(loadCase.noseUp()));
        row.add(held(loadCase.noseDown()));
        for (ForceForGrade force : loadCase.forceFor()) {
            boolean slides = force.larger() == Double.POSITIVE_INFINITY;
            row.add(slides ? "tyres slide" : show.value(force.larger(), Dimension.FORCE));
        }
        row.add(show.value(loadCase.decelerationG() * Gravity.STANDARD, Dimension.ACCELERATION));
        return List.copyOf(row);
    }

    private String held(GradeHeld held) {
        return show.percent(held.grade()) + (held.gripLimited() ? ", tyres slide" : "");
    }
}
