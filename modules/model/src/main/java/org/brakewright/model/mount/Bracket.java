package org.brakewright.model.mount;

import java.util.List;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** What carries pivot or masters or both; so much stiffer than the panel that only its seat gives way. */
public record Bracket(
        @Label("name of the bracket") @Required("Any name you know it by.")
        String name,

        @Label("what it carries") @Required("pivot, masters, or both: [pivot, masters].")
        List<Carried> carries,

        @Label("face it sits on") @Required("driver or engine: which face of the panel its foot lies on.")
        Side side,

        @Label(value = "bolts", how = "What bolts it to the panel.") @Nullable
        Bolts bolts,

        @Label(value = "welds", how = "What welds it to the panel.") @Nullable
        List<Weld> welds) {}
