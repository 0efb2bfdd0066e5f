package org.brakewright.analysis.balance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.balance.ForceDiagram.GripLine;
import org.brakewright.analysis.balance.ForceDiagram.Point;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.IdealCurve;
import org.brakewright.kernel.dynamics.OneAxleBraked;

/** Draws the force diagram of a load case as numbers. */
public final class ForceDiagrams {
    private static final double MOST_G = 1.3;
    private static final int STEPS = 65;

    private ForceDiagrams() {}

    /** The diagram for a chain, axle loads, and the grips whose lines are wanted. */
    public static ForceDiagram draw(String loadCase, ChainCurve curve, AxleLoads loads, double... grips) {
        List<GripLine> lines = new ArrayList<>();
        for (double grip : grips) {
            lines.add(frontLine(grip, loads));
            lines.add(rearLine(grip, loads));
        }
        return new ForceDiagram(loadCase, ideal(loads), installed(curve, loads), List.copyOf(lines));
    }

    private static List<Point> ideal(AxleLoads loads) {
        List<Point> points = new ArrayList<>();
        IdealCurve ideal = new IdealCurve(loads);
        double most = Math.min(MOST_G, loads.liftOffDecelerationG());
        for (int i = 0; i < STEPS; i++) {
            double z = most * i / (STEPS - 1);
            points.add(new Point(ideal.frontForce(z) / loads.weight(), ideal.rearForce(z) / loads.weight()));
        }
        return points;
    }

    private static List<Point> installed(ChainCurve curve, AxleLoads loads) {
        double end = curve.pedalForce(MOST_G * loads.weight()).orElse(ChainCurve.MOST_PEDAL_FORCE);
        List<Point> points = new ArrayList<>();
        for (ChainState state : curve.bends()) {
            if (state.pedalForce() < end) {
                points.add(point(state, loads));
            }
        }
        points.add(point(curve.at(end), loads));
        return points;
    }

    private static Point point(ChainState state, AxleLoads loads) {
        return new Point(state.frontForce() / loads.weight(), state.rearForce() / loads.weight());
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
