package org.brakewright.findings;

import java.util.Map;
import org.brakewright.analysis.Analysis;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.resolved.Aims;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * What rules look at.
 *
 * @param build complete and in SI
 * @param analysis its numbers
 * @param assumed how well each value is known that nobody gave, by key path
 */
public record Facts(ResolvedBuild build, Analysis analysis, Map<String, Tag> assumed) {

    /** Facts of a build of which everything was given. */
    public Facts(ResolvedBuild build, Analysis analysis) {
        this(build, analysis, Map.of());
    }

    /** An aim of the intent as a limit: the builder's own, or openly ours when none was given. */
    public Limit aim(String key, Figure figure) {
        return aim(
                "intent." + key, figure, "aim for the hard stop", "aim assumed for the hard stop, since none is given");
    }

    /** An aim at a path as a limit, in words for when the builder gave it and for when it is ours. */
    public Limit aim(String path, Figure figure, String given, String ours) {
        Tag tag = assumed.get(path);
        return tag == null ? new Limit(figure, given, Tag.BUILDERS_CHOICE) : new Limit(figure, ours, tag);
    }

    /** What the builder wants. */
    public Aims aims() {
        return build.aims();
    }

    /** Whether the builder chose a rule set. */
    public boolean answersTo(RuleSet ruleSet) {
        return build.ruleSets().contains(ruleSet);
    }
}
