package org.brakewright.analysis.resolve;

import org.brakewright.model.lines.Ball;
import org.brakewright.model.lines.Box;
import org.brakewright.model.lines.Obstacle;
import org.brakewright.model.lines.RoundBar;
import org.brakewright.model.lines.Spot;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Shape;

/** Takes what lines and pedals keep clear of. */
record ResolveObstacle(Values values) {

    ResolvedLines.Obstacle obstacle(Obstacle obstacle) {
        return switch (obstacle) {
            case RoundBar bar ->
                new ResolvedLines.Obstacle(
                        bar.name(),
                        bar.near(),
                        Shape.CYLINDER,
                        spot(bar.from()),
                        spot(bar.to()),
                        values.need(bar.radius()));
            case Box box ->
                new ResolvedLines.Obstacle(box.name(), box.near(), Shape.BOX, spot(box.from()), spot(box.to()), 0);
            case Ball ball ->
                new ResolvedLines.Obstacle(
                        ball.name(),
                        ball.near(),
                        Shape.SPHERE,
                        spot(ball.at()),
                        spot(ball.at()),
                        values.need(ball.radius()));
        };
    }

    /** Reports one that takes no room. */
    void report(String path, ResolvedLines.Obstacle obstacle) {
        ResolvedLines.Spot a = obstacle.from();
        ResolvedLines.Spot b = obstacle.to();
        boolean flat = obstacle.shape() == Shape.BOX && (a.x() == b.x() || a.y() == b.y() || a.z() == b.z());
        boolean none = obstacle.shape() == Shape.CYLINDER && a.to(b) == 0;
        if (flat || none) {
            values.problem(
                    path + ".to",
                    obstacle.name(),
                    obstacle.name() + " takes no room: its ends or corners lie on each other.",
                    flat ? "a corner that differs in forward, left and up" : "another point than from");
        }
    }

    ResolvedLines.Spot spot(Spot spot) {
        return new ResolvedLines.Spot(values.need(spot.forward()), values.need(spot.left()), values.need(spot.up()));
    }
}
