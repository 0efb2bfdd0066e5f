package org.brakewright.findings;

import java.util.List;

/** Judges one thing. One class, one test, one page in docs/findings. */
public interface Rule {

    /** Name of the rule and of its page, snake_case. */
    String key();

    /** The judgements, none when the rule does not apply to this car. */
    List<Finding> judge(Facts facts);
}
