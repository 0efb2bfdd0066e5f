package org.brakewright.analysis.balance;

import java.util.List;

/**
 * Rear against front brake force of one load case, both over the car's weight.
 *
 * @param loadCase its name
 * @param ideal curve on which both axles use the same grip
 * @param installed curve of the car as built
 * @param gripLines lines on which one axle uses a given grip
 */
public record ForceDiagram(String loadCase, List<Point> ideal, List<Point> installed, List<GripLine> gripLines) {

    /**
     * A point of the diagram.
     *
     * @param front front brake force over weight
     * @param rear rear brake force over weight
     */
    public record Point(double front, double rear) {}

    /**
     * Line of one axle at its grip.
     *
     * @param grip tyre grip
     * @param axle axle that is at its grip all along
     * @param from one end
     * @param to other end
     */
    public record GripLine(double grip, Lock.Axle axle, Point from, Point to) {}
}
