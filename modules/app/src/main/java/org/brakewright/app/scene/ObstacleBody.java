package org.brakewright.app.scene;

import java.util.List;
import org.brakewright.app.scene.SceneView.Body;
import org.brakewright.app.scene.SceneView.Group;
import org.brakewright.app.scene.SceneView.Shape;
import org.brakewright.app.scene.SceneView.Tone;
import org.brakewright.model.lines.Nearness;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;

/** What lines and pedals keep clear of. */
final class ObstacleBody {
    private ObstacleBody() {}

    static Body of(Obstacle obstacle, Group group) {
        Shape shape = switch (obstacle.shape()) {
            case CYLINDER -> Shape.ROD;
            case BOX -> Shape.BOX;
            case SPHERE -> Shape.BALL;
        };
        return new Body(
                "obstacle:" + obstacle.name(),
                obstacle.name(),
                group,
                shape,
                shape == Shape.BALL ? Spots.of(obstacle.from()) : Spots.of(obstacle.from(), obstacle.to()),
                Spots.millimetre(obstacle.radius()),
                List.of(),
                obstacle.near() == Nearness.HOT ? Tone.HOT : Tone.ROOM,
                switch (obstacle.near()) {
                    case HOT -> "Hot: lines keep away or are shielded.";
                    case MOVING -> "All the room that it sweeps.";
                    case WHEEL -> "All the room that the wheel sweeps.";
                    case FIXED -> "Part of body or frame.";
                });
    }
}
