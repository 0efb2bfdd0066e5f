package org.brakewright.analysis.lines;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.Form;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.NutThread;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.lines.Seat;
import org.brakewright.model.lines.TubeMaterial;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Bender;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Part;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedLines.Tube;
import org.jspecify.annotations.Nullable;

/** Lines put together one after the other, invented. */
final class Plumbed {
    private final List<Part> parts = new ArrayList<>();
    private final List<Tube> tubes = new ArrayList<>();
    private final List<Obstacle> obstacles = new ArrayList<>();

    Plumbed part(String name, PartKind kind, @Nullable Circuit circuit, Spot at, boolean bleeder) {
        parts.add(new Part(name, kind, circuit, at, bleeder));
        return this;
    }

    Plumbed tube(String name, String from, String to, List<Spot> points) {
        List<Double> radii =
                points.subList(1, points.size() - 1).stream().map(_ -> 0.02).toList();
        tubes.add(new Tube(
                name,
                TubeMaterial.STEEL,
                4.75e-3,
                0.7e-3,
                end(from),
                end(to),
                points,
                radii,
                List.of(0.1),
                true,
                0.97));
        return this;
    }

    Plumbed near(Obstacle obstacle) {
        obstacles.add(obstacle);
        return this;
    }

    ResolvedLines lines() {
        return new ResolvedLines(
                new Bender(0.02, 0.03, 0.01, 0.02), List.of(1.0), 0, 0.002, 0.03, parts, tubes, List.of(), obstacles);
    }

    private static LineEnd end(String to) {
        return new LineEnd(to, Form.DOUBLE_45, NutThread.UNF_3_8_24, Seat.INVERTED_45, NutThread.UNF_3_8_24);
    }
}
