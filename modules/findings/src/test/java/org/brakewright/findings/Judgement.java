package org.brakewright.findings;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.cure.Cure;

/** Takes findings apart for tests. */
public final class Judgement {
    private Judgement() {}

    /** The only finding of a rule on a car. */
    public static Finding only(Rule rule, TestCar car) {
        List<Finding> findings = car.judgedBy(rule);
        if (findings.size() != 1) {
            throw new AssertionError("one finding expected: " + findings);
        }
        return findings.getFirst();
    }

    /** The finding of a rule on a car about one subject. */
    public static Finding about(String subject, Rule rule, TestCar car) {
        return about(subject, rule.key(), car.judgedBy(rule));
    }

    /** The finding with a key and subject. */
    public static Finding about(String subject, String key, List<Finding> findings) {
        return findings.stream()
                .filter(each -> each.key().equals(key) && each.subject().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " about " + subject + " in " + findings));
    }

    /** The judged value, SI. */
    public static double found(Finding finding) {
        return requireNonNull(finding.found()).value();
    }

    /** The limit. */
    public static Limit limit(Finding finding) {
        return requireNonNull(finding.limit());
    }

    /** The limit's value, SI. */
    public static double limitValue(Finding finding) {
        return limit(finding).figure().value();
    }

    /** A named figure, SI. */
    public static double figure(String name, Finding finding) {
        return requireNonNull(finding.figures().get(name), name).value();
    }

    /** The cure. */
    public static Cure cure(Finding finding) {
        return requireNonNull(finding.cure(), "no cure of " + finding.key());
    }

    /** The hard stop. */
    public static HardStop hardStop(Facts facts) {
        return requireNonNull(facts.analysis().hardStop());
    }

    /** The judgements of all rules on a car with some SI values replaced. */
    public static List<Finding> all(TestCar car, Map<String, Double> overrides) {
        return Rules.judge(car.facts(overrides));
    }
}
