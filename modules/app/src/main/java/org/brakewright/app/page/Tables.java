package org.brakewright.app.page;

import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.analysis.vehicle.StopFrom;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.findings.Assessment;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Tables in the units shown. */
public final class Tables {
    private final Show show;
    private final Assessment assessment;

    /** Tables of an assessment. */
    public Tables(Show show, Assessment assessment) {
        this.show = show;
        this.assessment = assessment;
    }

    /** The car at each deceleration. */
    public PageView.Table points(LoadCaseResult result) {
        return new PageView.Table(
                "At each deceleration, " + result.name(),
                List.of("deceleration", "effort", "travel", "front", "rear", "front grip", "rear grip", "efficiency"),
                result.atDeceleration().stream().map(this::row).toList());
    }

    private List<String> row(OperatingPoint point) {
        return List.of(
                g(point.decelerationG()),
                show.value(point.pedalForceN(), Dimension.FORCE),
                show.value(point.pedalTravelM(), Dimension.LENGTH) + (point.withinTravel() ? "" : " (not there)"),
                show.value(point.frontPressurePa(), Dimension.PRESSURE),
                show.value(point.rearPressurePa(), Dimension.PRESSURE),
                show.fixed(point.frontAdhesion(), 2),
                orDash(point.rearAdhesion()),
                point.efficiency() == null ? "-" : show.percent(point.efficiency()));
    }

    private String orDash(@Nullable Double value) {
        return value == null ? "-" : show.fixed(value, 2);
    }

    /** Which axle locks first at each grip. */
    public PageView.Table locks(LoadCaseResult result) {
        return new PageView.Table(
                "What locks first, " + result.name(),
                List.of("grip", "first", "at", "grip used"),
                result.lock().stream().map(this::row).toList());
    }

    private List<String> row(Lock lock) {
        return List.of(
                show.fixed(lock.grip(), 1),
                lock.axle().name().toLowerCase(Locale.ROOT),
                g(lock.decelerationG()),
                show.percent(lock.efficiency()));
    }

    /** Stops from the speeds that published tests use. */
    public PageView.Table stops() {
        return new PageView.Table(
                "Stops without a locked wheel, at no more than " + show.value(StopsFrom.MOST_FORCE, Dimension.FORCE),
                List.of("from", "holds", "load case", "set by", "stops in"),
                assessment.analysis().stopsFrom().stream().map(this::row).toList());
    }

    private List<String> row(StopFrom stop) {
        return List.of(
                show.value(stop.speedMS(), Dimension.SPEED),
                g(stop.decelerationG()),
                stop.loadCase(),
                stop.byLock() ? "first wheel to lock" : "pedal force",
                show.value(
                        stop.distanceM(), Dimension.LENGTH, show.system() == UnitSystem.US ? Unit.FOOT : Unit.METRE));
    }

    /** Where the pedal's travel goes at the hard stop. */
    public List<PageView.BudgetRow> travelBudget() {
        HardStop stop = assessment.analysis().hardStop();
        if (stop == null) {
            return List.of();
        }
        return stop.travelBudget().stream()
                .filter(share -> share.padTravelM() > 0)
                .map(share -> budgetRow(share, stop.point().pedalTravelM()))
                .toList();
    }

    private PageView.BudgetRow budgetRow(TravelShare share, double whole) {
        return new PageView.BudgetRow(
                label(share),
                share.where().name().toLowerCase(Locale.ROOT),
                show.value(share.padTravelM(), Dimension.LENGTH),
                share.padTravelM() / whole);
    }

    /** A cause with its circuit. */
    static String label(TravelShare share) {
        String cause = words(share.cause());
        return share.where() == TravelShare.Where.PEDAL
                ? cause
                : share.where().name().toLowerCase(Locale.ROOT) + ", " + cause;
    }

    private static String words(Cause cause) {
        return switch (cause) {
            case FREE_PLAY -> "free play";
            case SLACK -> "slack in rods and clevises";
            case LOST_STROKE -> "masters' lost stroke";
            case CLEARANCE -> "running clearance";
            case KNOCK_BACK -> "pads knocked back";
            case BRAKE_GIVE -> "caliper or shoes give";
            case PADS -> "pads give";
            case HOSES -> "hoses swell";
            case TUBES -> "tubes swell";
            case LIQUID -> "fluid is squeezed";
            case AIR -> "air is squeezed";
            case BAR -> "balance bar turns";
            case MOUNT -> "pedal mount gives";
            case ARM -> "pedal arm bends";
        };
    }

    private String g(double decelerationG) {
        return show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
