package org.brakewright.analysis.hydraulics;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * Valves, lines and wheel cylinders of one axle, seen from the master: what arrives, and what it takes.
 *
 * <p>A residual valve leaves the line with a little pressure, so what that has taken is not taken again.
 *
 * @param valves in the line
 * @param demand of lines and brakes behind them
 * @param residualPressure that stays in the line at rest, Pa
 * @param threshold of the wheel brakes, Pa
 */
public record AxleLine(LineValves valves, CircuitVolume demand, double residualPressure, double threshold) {

    /** The line to an axle. */
    public static AxleLine of(AxleEnd axle, Valves valves, ResolvedBrake brake, ResolvedCircuit circuit) {
        return new AxleLine(
                LineValves.of(valves, axle),
                CircuitVolume.of(brake, circuit),
                circuit.residualPressure().orElse(0),
                brake.thresholdPressure());
    }

    /** The same line with a share of air in its fluid. */
    AxleLine withFreeAir(double share) {
        return new AxleLine(valves, demand.withFreeAir(share), residualPressure, threshold);
    }

    /** Pressure (Pa) at the wheels for one at the master (Pa). */
    public double atWheels(double masterPressure) {
        return Math.max(residualPressure, valves.outlet(masterPressure));
    }

    /** Volume (m3) taken from the master at a pressure there (Pa). */
    public double volume(double masterPressure) {
        double atWheels = atWheels(masterPressure);
        return residualPressure > 0 ? demand.total(atWheels) - demand.total(residualPressure) : demand.total(atWheels);
    }

    /** The same by cause, m3. */
    public Map<Cause, Double> byCause(double masterPressure) {
        Map<Cause, Double> taken = new EnumMap<>(demand.byCause(atWheels(masterPressure)));
        if (residualPressure > 0) {
            demand.byCause(residualPressure).forEach((cause, there) -> taken.merge(cause, -there, Double::sum));
        }
        return taken;
    }

    /** Pressures (Pa) at the master at which valves or wheel brakes set in or end. */
    DoubleStream bends() {
        DoubleStream atWheels = DoubleStream.of(threshold, residualPressure);
        return DoubleStream.concat(valves.bends(), atWheels.flatMap(pressure -> valves.inlet(pressure).stream()));
    }
}
