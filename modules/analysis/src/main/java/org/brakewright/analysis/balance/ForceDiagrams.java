package org.brakewright.analysis.balance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.balance.ForceDiagram.GripLine;
import org.brakewright.analysis.balance.ForceDiagram.Point;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.IdealCurve;
import org.brakewright.kernel.dynamics.OneAxleBraked;

/** Draws the force diagram of a load case as numbers. */
public final class ForceDiagrams {
    private static final double MOST_G = 1.3;
    private static final int STEPS = 65;

    private ForceDiagrams() {}

    /** The diagram for a swept chain, axle loads, and the grips whose lines are wanted. */
    public static ForceDiagram draw(String loadCase, Sweep sweep, AxleLoads loads, double... grips) {
        List<GripLine> lines = new ArrayList<>();
        for (double grip : grips) {
            lines.add(frontLine(grip, loads));
            lines.add(rearLine(grip, loads));
        }
        return new ForceDiagram(loadCase, ideal(loads), installed(sweep, loads), List.copyOf(lines));
    }

    private static List<Point> ideal(AxleLoads loads) {
        List<Point> points = new ArrayList<>();
        IdealCurve curve = new IdealCurve(loads);
        double most = Math.min(MOST_G, loads.liftOffDecelerationG());
        for (int i = 0; i < STEPS; i++) {
            double z = most * i / (STEPS - 1);
            points.add(new Point(curve.frontForce(z) / loads.weight(), curve.rearForce(z) / loads.weight()));
        }
        return points;
    }

    private static List<Point> installed(Sweep sweep, AxleLoads loads) {
        List<Point> points = new ArrayList<>();
        for (ChainState state : sweep.states()) {
            points.add(new Point(state.frontForce() / loads.weight(), state.rearForce() / loads.weight()));
            if (state.totalForce() > MOST_G * loads.weight()) {
                break;
            }
        }
        return points;
    }

    /** Front at its grip: x = k (f + chi (x + y)), a line from the front axis to where the rear has no load. */
    private static GripLine frontLine(double grip, AxleLoads loads) {
        double noRear = OneAxleBraked.frontOnly(loads, grip);
        return new GripLine(
                grip, Lock.Axle.FRONT, new Point(noRear, 0), frontAt(grip, loads, Math.max(MOST_G, 1.2 * grip)));
    }

    private static Point frontAt(double grip, AxleLoads loads, double z) {
        double front = grip * loads.front(z) / loads.weight();
        return new Point(front, z - front);
    }

    /** Rear at its grip: y = k (r - chi (x + y)), a line from the rear axis to the front axis. */
    private static GripLine rearLine(double grip, AxleLoads loads) {
        double noFront = OneAxleBraked.rearOnly(loads, grip);
        double z = loads.liftOffDecelerationG();
        return new GripLine(grip, Lock.Axle.REAR, new Point(0, noFront), new Point(z, 0));
    }
}
