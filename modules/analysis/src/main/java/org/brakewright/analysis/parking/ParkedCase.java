package org.brakewright.analysis.parking;

import java.util.List;

/**
 * The parking brake with one load case.
 *
 * @param name of the load case
 * @param noseUp steepest grade held nose uphill
 * @param noseDown steepest grade held nose downhill
 * @param decelerationG as a second brake, rolling forward on the level, g
 * @param forceFor forces for the grades that published rules ask for
 */
public record ParkedCase(
        String name, GradeHeld noseUp, GradeHeld noseDown, double decelerationG, List<ForceForGrade> forceFor) {

    /** The lesser of the grades held both ways. */
    public double leastGrade() {
        return Math.min(noseUp.grade(), noseDown.grade());
    }

    /**
     * The force for one of the grades of {@link #forceFor}.
     *
     * @throws IllegalArgumentException when that grade is not among them
     */
    public ForceForGrade forceFor(double grade) {
        for (ForceForGrade force : forceFor) {
            if (force.grade() == grade) {
                return force;
            }
        }
        throw new IllegalArgumentException("no force was computed for a grade of " + grade);
    }
}
