package org.brakewright.analysis.mount;

import java.util.List;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Motion;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;

/** How the brackets of a mount move under each unit force (N) and moment (N m) on each of them; m and rad. */
final class Compliance {
    /** Turns are compared with shifts at this distance, m: what lies between a bracket and its pad. */
    private static final double ARM = 0.2;

    private final double[][] motions;

    private Compliance(double[][] motions) {
        this.motions = motions;
    }

    /** From one case a unit force or moment, six a bracket, in the brackets' order. */
    static Compliance of(List<CaseResult> cases, List<Integer> brackets) {
        return new Compliance(
                cases.stream().map(each -> motions(each, brackets)).toArray(double[][]::new));
    }

    private static double[] motions(CaseResult result, List<Integer> brackets) {
        double[] motions = new double[6 * brackets.size()];
        for (int i = 0; i < brackets.size(); i++) {
            Motion motion = result.motion(brackets.get(i));
            put(motions, i, motion.shift(), motion.turn());
        }
        return motions;
    }

    private static void put(double[] all, int bracket, Vector3 first, Vector3 second) {
        double[] six = {first.x(), first.y(), first.z(), second.x(), second.y(), second.z()};
        for (int i = 0; i < six.length; i++) {
            all[6 * bracket + i] += six[i];
        }
    }

    /** What loads do to the movement along themselves: for the loads of 1 N at the pad its movement, m/N. */
    double give(Wrench[] onBrackets) {
        return between(onBrackets, onBrackets);
    }

    /** What some loads do to the movement along others, and the other way round. */
    double between(Wrench[] some, Wrench[] others) {
        double[] first = loads(some);
        double[] second = loads(others);
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < first.length; j++) {
                sum += first[i] * motions[i][j] * second[j];
            }
        }
        return sum;
    }

    private double[] loads(Wrench[] onBrackets) {
        double[] loads = new double[motions.length];
        for (int i = 0; i < onBrackets.length; i++) {
            put(loads, i, onBrackets[i].force(), onBrackets[i].moment());
        }
        return loads;
    }

    /** The difference from a coarser one over the whole, both as root of the sum of squares. */
    double change(Compliance coarse) {
        double difference = 0;
        double whole = 0;
        for (int i = 0; i < motions.length; i++) {
            for (int j = 0; j < motions.length; j++) {
                double weight = weight(i) * weight(j);
                difference += Math.pow(weight * (motions[i][j] - coarse.motions[i][j]), 2);
                whole += Math.pow(weight * motions[i][j], 2);
            }
        }
        return Math.sqrt(difference / whole);
    }

    private static double weight(int freedom) {
        return freedom % 6 < 3 ? 1 : ARM;
    }
}
