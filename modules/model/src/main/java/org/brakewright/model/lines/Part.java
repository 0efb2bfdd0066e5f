package org.brakewright.model.lines;

import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** Something that lines are joined to. */
public record Part(
        @Label("name of the part") @Required("Any name you know it by.")
        String name,

        @Label("what it is") @Required("One of the words allowed.")
        PartKind kind,

        @Label(value = "circuit", how = "What it feeds; for masters only, all others follow from the lines.") @Nullable
        Circuit circuit,

        @Label("place of its highest room for fluid") @Required("Where its bleeder or its upper port is.")
        Spot at,

        @Label(value = "bleeder", how = "Whether a bleeder sits at its highest point.") @Nullable
        Boolean bleeder) {}
