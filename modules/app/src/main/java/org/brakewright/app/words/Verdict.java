package org.brakewright.app.words;

import java.util.List;
import org.brakewright.findings.Assessment;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;

/**
 * The verdict in words.
 *
 * @param state of the worst finding
 * @param sentence one sentence
 */
public record Verdict(State state, String sentence) {

    /** The verdict of an assessment. */
    public static Verdict of(Assessment assessment, FindingWords words) {
        State state = assessment.verdict();
        List<Finding> worst = assessment.findings().stream()
                .filter(finding -> finding.state() == state)
                .toList();
        return new Verdict(state, sentence(state, worst, words));
    }

    private static String sentence(State state, List<Finding> worst, FindingWords words) {
        return switch (state) {
            case STOP -> words.sentence(worst.getFirst()) + others(worst.size() - 1, "stop");
            case CAUTION ->
                "Nothing forbids it, but: " + words.sentence(worst.getFirst()) + others(worst.size() - 1, "caution");
            case CANNOT_TELL ->
                "Every number that could be judged is within its limit; " + count(worst.size(), "thing")
                        + " cannot be told yet.";
            case FINE -> "Every number and every check is within its limit.";
        };
    }

    private static String others(int more, String what) {
        return switch (more) {
            case 0 -> "";
            case 1 -> " One more finding says " + what + ".";
            default -> " " + more + " more findings say " + what + ".";
        };
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
