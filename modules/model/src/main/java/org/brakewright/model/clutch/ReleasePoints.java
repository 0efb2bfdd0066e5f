package org.brakewright.model.clutch;

import java.util.List;
import org.brakewright.model.Kind;
import org.brakewright.model.Label;
import org.brakewright.model.Required;

/** Force at the release bearing over its travel, read off a press or a sheet, new plate. */
@Kind("release_points")
public record ReleasePoints(
        @Label(value = "points", how = "From touching the fingers on, travel rising.")
        @Required("At least two points, each with travel and force.")
        List<ReleasePoint> points)
        implements Diaphragm {}
