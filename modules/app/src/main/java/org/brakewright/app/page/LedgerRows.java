package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.ledger.ClutchHeadline;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.ledger.HeatHeadline;
import org.brakewright.analysis.ledger.LedgerEntry;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** The ledger of assumptions, ranked as what to measure next. */
public final class LedgerRows {
    private static final double NOTICEABLE = 0.01;

    private final Show show;

    /** Rows in a system of units. */
    public LedgerRows(Show show) {
        this.show = show;
    }

    /** All rows, heaviest first. */
    public List<PageView.LedgerRow> of(Assessment assessment) {
        List<PageView.LedgerRow> rows = new ArrayList<>();
        for (LedgerEntry entry : assessment.ledger()) {
            rows.add(row(entry, rows.size() + 1));
        }
        return List.copyOf(rows);
    }

    private PageView.LedgerRow row(LedgerEntry entry, int rank) {
        Assumption assumption = entry.assumption();
        return new PageView.LedgerRow(
                assumption.path(),
                assumption.title(),
                show.value(assumption.value(), assumption.dimension()),
                show.value(assumption.low(), assumption.dimension()) + " to "
                        + show.value(assumption.high(), assumption.dimension()),
                assumption.basis(),
                assumption.tag().words(),
                assumption.byBuilder(),
                rank,
                moves(entry.atLow(), entry.atHigh()),
                FieldCatalogue.at(assumption.path()).how());
    }

    private List<String> moves(Headline low, Headline high) {
        List<String> moves = new ArrayList<>();
        add(moves, "effort", low.effortN(), high.effortN(), Dimension.FORCE);
        add(moves, "travel", low.travelM(), high.travelM(), Dimension.LENGTH);
        addCritical(moves, low.criticalDecelerationG(), high.criticalDecelerationG());
        addClutch(moves, low.clutch(), high.clutch());
        addHeat(moves, low.heat(), high.heat());
        return List.copyOf(moves);
    }

    private void add(
            List<String> moves, String what, @Nullable Double low, @Nullable Double high, Dimension dimension) {
        if (low == null || high == null) {
            if (low != null || high != null) {
                moves.add(what + ": only at one end of the range");
            }
        } else if (Math.abs(high - low) > NOTICEABLE * Math.max(Math.abs(high), Math.abs(low))) {
            moves.add(what + " " + show.value(low, dimension) + " to " + show.value(high, dimension));
        }
    }

    private void addClutch(List<String> moves, @Nullable ClutchHeadline low, @Nullable ClutchHeadline high) {
        if (low != null && high != null) {
            add(moves, "clutch effort", low.effortN(), high.effortN(), Dimension.FORCE);
            add(moves, "bearing travel to spare", low.spareM(), high.spareM(), Dimension.LENGTH);
            add(moves, "clutch torque", low.torqueNM(), high.torqueNM(), Dimension.TORQUE);
        }
    }

    private void addHeat(List<String> moves, @Nullable HeatHeadline low, @Nullable HeatHeadline high) {
        if (low != null && high != null) {
            add(moves, "hottest face", low.facePeakK(), high.facePeakK(), Dimension.TEMPERATURE);
            add(moves, "hottest fluid", low.fluidPeakK(), high.fluidPeakK(), Dimension.TEMPERATURE);
            add(moves, "effort hot", low.hotEffortN(), high.hotEffortN(), Dimension.FORCE);
        }
    }

    private void addCritical(List<String> moves, @Nullable Double low, @Nullable Double high) {
        if (low != null && high != null && low > 0 && high > 0) {
            double g = Gravity.STANDARD;
            add(moves, "rear first above", g * low, g * high, Dimension.ACCELERATION);
        } else if (!critical(low).equals(critical(high))) {
            moves.add("rear first " + critical(low) + " to " + critical(high));
        }
    }

    private String critical(@Nullable Double decelerationG) {
        if (decelerationG == null) {
            return "never";
        }
        return decelerationG <= 0
                ? "always"
                : "above " + show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
