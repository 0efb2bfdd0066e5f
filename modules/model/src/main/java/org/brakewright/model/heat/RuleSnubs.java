package org.brakewright.model.heat;

import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** The heating snubs of a published test. */
@Kind("rule_snubs")
public record RuleSnubs(
        @Label("name of the schedule") @Required("Any name you know it by.")
        String name,

        @Label(
                value = "rule",
                how = "15 snubs, one each 45 s, at 3 m/s2, from 80 % of top speed but at most 120 km/h to half.")
        @Required("un_r13h or fmvss_135: 15 snubs, one each 45 s.")
        HeatingRule rule)
        implements Schedule {}
