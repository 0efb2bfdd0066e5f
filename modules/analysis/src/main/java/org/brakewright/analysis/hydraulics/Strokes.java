package org.brakewright.analysis.hydraulics;

import org.brakewright.model.hydraulics.Chamber;
import org.brakewright.model.resolved.ResolvedApply;

/** Stroke of the master or chamber that feeds an axle. */
public final class Strokes {
    private Strokes() {}

    /** Stroke toward the front brakes, m. */
    public static double front(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin -> twin.front().stroke();
            case ResolvedApply.Tandem tandem -> chamber(tandem, Chamber.PRIMARY);
        };
    }

    /** Stroke toward the rear brakes, m. */
    public static double rear(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin -> twin.rear().stroke();
            case ResolvedApply.Tandem tandem -> chamber(tandem, Chamber.SECONDARY);
        };
    }

    /** The primary chamber's stroke when the front is fed by the chamber asked for. */
    private static double chamber(ResolvedApply.Tandem tandem, Chamber primaryWhenFrontIs) {
        return tandem.frontFedBy() == primaryWhenFrontIs ? tandem.primaryStroke() : tandem.secondaryStroke();
    }
}
