package org.brakewright.model.lines;

import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/** One end of a tube or hose and the port it is screwed into. */
public record LineEnd(
        @Label("part it goes to") @Required("The name of one of the parts.")
        String to,

        @Label("form of the end") @Required("Look at the end: one cone, a cone folded back, a bubble, an eye.")
        Form form,

        @Label(value = "thread of its nut", how = "Measure the pitch with a gauge; leave out for an end without a nut.")
        @Nullable
        NutThread nut,

        @Label("seat in the port") @Required("Look into the port with a lamp, or read the part's sheet.")
        Seat seat,

        @Label(value = "thread of the port", how = "Try a known nut by hand, or read the part's sheet.") @Nullable
        NutThread portThread) {}
