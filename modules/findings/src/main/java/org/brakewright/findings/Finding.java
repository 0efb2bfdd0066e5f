package org.brakewright.findings;

import java.util.List;
import java.util.Map;
import org.brakewright.findings.cure.Cure;
import org.jspecify.annotations.Nullable;

/**
 * One judgement: a key and typed values. The roof adds the words from one catalogue.
 *
 * @param key name of the rule, also of its page in docs/findings
 * @param subject what it is about when a rule judges several things: a load case, a circuit, a check; may be empty
 * @param state how it stands
 * @param variant which of several sentences of the state fits; empty for the usual one
 * @param found the number that was judged; null when there is none
 * @param limit what it was held against; null when there is none
 * @param figures further typed values for the sentence, by name
 * @param inputs key paths of the inputs that matter most
 * @param cure smallest single change that cures it; null when none was looked for or found
 */
public record Finding(
        String key,
        String subject,
        State state,
        String variant,
        @Nullable Figure found,
        @Nullable Limit limit,
        Map<String, Figure> figures,
        List<String> inputs,
        @Nullable Cure cure) {

    /** The same finding with a cure. */
    public Finding withCure(Cure found) {
        return new Finding(key, subject, state, variant, this.found, limit, figures, inputs, found);
    }

    /** Whether another finding is the same judgement, whatever its state. */
    public boolean sameJudgement(Finding other) {
        return key.equals(other.key) && subject.equals(other.subject);
    }
}
