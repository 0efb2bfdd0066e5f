package org.brakewright.model.lines;

import static org.brakewright.quantity.Dimension.LENGTH;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** A flexible hose from part to part. */
public record Hose(
        @Label("name of the hose") @Required("Any name you know it by.")
        String name,

        @Asked(label = "free length", dimension = LENGTH, least = 0.05, most = 3.0, why = "brake hoses lie within this")
        @Required("Laid straight, from seat to seat.")
        Given length,

        @Label("start") @Required("The end nearer the master.")
        LineEnd start,

        @Label("end") @Required("The end nearer the wheel.") LineEnd end) {}
