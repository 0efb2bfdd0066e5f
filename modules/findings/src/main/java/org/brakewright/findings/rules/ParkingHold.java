package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.parking.ParkedCase;
import org.brakewright.analysis.parking.ParkingState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.intent.Use;
import org.brakewright.model.parking.Control;

/**
 * The grade that the parking brake holds both ways with the driver's force, and the force that published rules allow for it.
 * Silent on a track car that has none.
 */
public final class ParkingHold implements Rule {
    private static final double GRADE = 0.20;

    /** UK in-service figure for goods vehicles, force over weight, secondary source: the least that any text asks for. */
    private static final double LEAST_GRADE = 0.16;

    private static final double HAND = 400;
    private static final double FOOT = 500;

    private record Demand(RuleSet ruleSet, String clause) {}

    private static final List<Demand> DEMANDS = List.of(
            new Demand(RuleSet.UN_R13H, "UN R13-H Annex 3, parking, laden"),
            new Demand(RuleSet.FMVSS_135, "FMVSS 135 S7.12"));

    @Override
    public String key() {
        return "parking_hold";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ParkingState parking = facts.analysis().parking();
        if (parking == null) {
            return facts.build().use() == Use.TRACK ? List.of() : List.of(unknown());
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(held(parking));
        for (Demand demand : DEMANDS) {
            if (facts.answersTo(demand.ruleSet())) {
                findings.add(byRule(parking, demand));
            }
        }
        return List.copyOf(findings);
    }

    private Finding unknown() {
        return Judged.as(State.CANNOT_TELL, this).inputs("parking").finding();
    }

    private Finding held(ParkingState parking) {
        ParkedCase worst = parking.loadCases().stream()
                .min(Comparator.comparingDouble(ParkedCase::leastGrade))
                .orElseThrow();
        double grade = worst.leastGrade();
        double force = greatestForce(parking);
        boolean slides = force == Double.POSITIVE_INFINITY;
        Judged judged = Judged.as(grade >= GRADE ? State.FINE : grade >= LEAST_GRADE ? State.CAUTION : State.STOP, this)
                .saying(grade < GRADE && slides ? "slides" : "")
                .found(Figure.ratio(grade))
                .against(Figure.ratio(GRADE), "grade a parked car should hold both ways", Tag.COMMON_PRACTICE)
                .with("nose_up", Figure.ratio(worst.noseUp().grade()))
                .with("nose_down", Figure.ratio(worst.noseDown().grade()))
                .with("driver", Figure.force(parking.driverForceN()));
        return ratio(judged, parking, force, parking.driverForceN());
    }

    private Finding byRule(ParkingState parking, Demand demand) {
        double allowed = parking.control() == Control.HAND ? HAND : FOOT;
        double force = greatestForce(parking);
        boolean slides = force == Double.POSITIVE_INFINITY;
        Judged judged = Judged.as(force > allowed ? State.STOP : Standing.whenMet(Tag.FROM_MEMORY), this)
                .about(demand.ruleSet().words())
                .saying(slides ? "slides_rule" : "rule")
                .against(Figure.force(allowed), demand.clause(), Tag.FROM_MEMORY)
                .with("grade", Figure.ratio(GRADE));
        return ratio(slides ? judged : judged.found(Figure.force(force)), parking, force, allowed);
    }

    /** Adds the lever ratio that would do, where force is what lacks. */
    private static Finding ratio(Judged judged, ParkingState parking, double force, double allowed) {
        if (force < Double.POSITIVE_INFINITY) {
            judged.with("ratio", Figure.ratio(parking.leverRatio()))
                    .with("ratio_needed", Figure.ratio(parking.leverRatioFor(allowed, force)));
        }
        return judged.inputs("parking.lever_ratio", "parking.driver_force", "parking.cable_efficiency")
                .finding();
    }

    private static double greatestForce(ParkingState parking) {
        return parking.loadCases().stream()
                .mapToDouble(loadCase -> loadCase.forceFor(GRADE).larger())
                .max()
                .orElseThrow();
    }
}
