package org.brakewright.analysis.resolve;

import java.util.List;
import org.brakewright.kernel.clutch.BellevilleSpring;
import org.brakewright.model.Given;
import org.brakewright.model.clutch.SpringDimensions;
import org.brakewright.model.resolved.ResolvedClutch.Spring;
import org.jspecify.annotations.Nullable;

/** Completes a measured diaphragm spring and refuses one that cannot clamp. */
final class ResolveDiaphragm {
    /** What is computed on when the measures contradict each other, so that all other faults are found too. */
    private static final Spring ANY = new Spring.Points(List.of(new Spring.Point(0.01, 1)), 1);

    private final Values values;
    private final String path;

    ResolveDiaphragm(Values values, String path) {
        this.values = values;
        this.path = path;
    }

    Spring spring(SpringDimensions given, @Nullable Given cushionTravel, double wear) {
        Spring.Dimensions spring = new Spring.Dimensions(
                new Spring.Rim(
                        values.need(given.outerDiameter()) / 2,
                        values.need(given.rimInnerDiameter()) / 2,
                        values.need(given.thickness()),
                        values.need(given.coneHeight()),
                        values.take(given.modulus(), path + ".modulus", ClutchDefaults.SPRING_MODULUS)),
                values.need(given.pressDiameter()) / 2,
                values.need(given.fulcrumDiameter()) / 2,
                values.need(given.bearingDiameter()) / 2,
                values.need(given.engagedDeflection()),
                values.take(cushionTravel, "clutch.plate.cushion_travel", ClutchDefaults.CUSHION_TRAVEL),
                values.take(given.fingerStiffness(), path + ".finger_stiffness", ClutchDefaults.FINGER_STIFFNESS));
        boolean rim = isRim(given, spring);
        boolean turns = turns(given, spring);
        boolean stands = rim && turns;
        return stands && lasts(given, spring, wear) && presses(given, spring, wear) ? spring : ANY;
    }

    private boolean isRim(SpringDimensions given, Spring.Dimensions spring) {
        return spring.rim().innerRadius() < spring.rim().outerRadius()
                || refused(
                        "rim_inner_diameter",
                        given.rimInnerDiameter(),
                        "The rim's inside is not smaller than its outside.",
                        "less than outer_diameter, " + Values.written(given.outerDiameter()));
    }

    private boolean turns(SpringDimensions given, Spring.Dimensions spring) {
        boolean ring = spring.fulcrumRadius() < spring.pressRadius()
                || refused(
                        "fulcrum_diameter",
                        given.fulcrumDiameter(),
                        "The ring it turns about is not smaller than the contact on the plate: that is a clutch whose"
                                + " bearing pulls, which is not computed.",
                        "less than press_diameter, " + Values.written(given.pressDiameter()));
        boolean tips = spring.bearingRadius() < spring.fulcrumRadius()
                || refused(
                        "bearing_diameter",
                        given.bearingDiameter(),
                        "The bearing does not push inside the ring that the spring turns about.",
                        "less than fulcrum_diameter, " + Values.written(given.fulcrumDiameter()));
        return ring && tips;
    }

    private boolean lasts(SpringDimensions given, Spring.Dimensions spring, double wear) {
        return wear < spring.engagedDeflection()
                || refused(
                        "engaged_deflection",
                        given.engagedDeflection(),
                        "With the plate worn as far as allowed the spring would be free and press no more.",
                        "more than the wear allowed of the plate");
    }

    /** Very tall cones snap through and push the wrong way. */
    private boolean presses(SpringDimensions given, Spring.Dimensions spring, double wear) {
        boolean always =
                pressing(spring, spring.engagedDeflection()) && pressing(spring, spring.engagedDeflection() - wear);
        return always
                || refused(
                        "cone_height",
                        given.coneHeight(),
                        "A cone so tall over its thickness has snapped through where it should clamp.",
                        "less than 2.8 times the thickness");
    }

    private static boolean pressing(Spring.Dimensions spring, double deflection) {
        Spring.Rim rim = spring.rim();
        double edges = (rim.outerRadius() - rim.innerRadius()) / (spring.pressRadius() - spring.fulcrumRadius());
        BellevilleSpring law = new BellevilleSpring(
                rim.outerRadius(), rim.innerRadius(), rim.thickness(), rim.coneHeight(), rim.modulus(), 0.3);
        return law.force(edges * deflection) > 0;
    }

    private boolean refused(String key, @Nullable Given given, String message, String allowed) {
        values.problem(path + "." + key, Values.written(given), message, allowed);
        return false;
    }
}
