package org.brakewright.analysis.hydraulics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.brakewright.kernel.hydraulics.MeteringValve;
import org.brakewright.kernel.hydraulics.ProportioningValve;
import org.brakewright.model.resolved.ResolvedApply.Metering;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * The valves in the line to one axle, one behind the other.
 *
 * @param inOrder from the master to the wheels
 */
public record LineValves(List<InLine> inOrder) {

    /** The valves in an axle's line. */
    public static LineValves of(Valves valves, AxleEnd axle) {
        Stream<InLine> metering =
                axle == AxleEnd.FRONT ? valves.metering().stream().map(LineValves::law) : Stream.of();
        Stream<InLine> proportioning = Stream.of(valves.proportioning(), valves.second())
                .flatMap(valve -> valve.stream())
                .filter(valve -> valve.line() == axle)
                .map(LineValves::law);
        return new LineValves(Stream.concat(metering, proportioning).toList());
    }

    /** Pressure (Pa) behind the valves for one in front of them (Pa). */
    public double outlet(double inlet) {
        double pressure = inlet;
        for (InLine valve : inOrder) {
            pressure = valve.outlet(pressure);
        }
        return pressure;
    }

    /** Pressure (Pa) in front of the valves that gives one behind them (Pa); empty when none does. */
    public OptionalDouble inlet(double outlet) {
        return inletBefore(inOrder.size(), outlet);
    }

    /** Pressures (Pa) in front of all valves at which one of them sets in or ends. */
    DoubleStream bends() {
        DoubleStream bends = DoubleStream.empty();
        for (int i = 0; i < inOrder.size(); i++) {
            int before = i;
            bends = DoubleStream.concat(
                    bends, inOrder.get(i).bends().flatMap(bend -> inletBefore(before, bend).stream()));
        }
        return bends;
    }

    private OptionalDouble inletBefore(int count, double outlet) {
        OptionalDouble pressure = OptionalDouble.of(outlet);
        for (int i = count - 1; i >= 0 && pressure.isPresent(); i--) {
            pressure = inOrder.get(i).inlet(pressure.getAsDouble());
        }
        return pressure;
    }

    private static InLine law(Valve valve) {
        return new Proportioning(new ProportioningValve(valve.knee(), valve.slope()));
    }

    private static InLine law(Metering valve) {
        return new HoldOff(new MeteringValve(valve.opening(), valve.blend()));
    }

    /** One valve. */
    private sealed interface InLine {
        double outlet(double inlet);

        OptionalDouble inlet(double outlet);

        DoubleStream bends();
    }

    private record Proportioning(ProportioningValve law) implements InLine {
        @Override
        public double outlet(double inlet) {
            return law.outlet(inlet);
        }

        @Override
        public OptionalDouble inlet(double outlet) {
            return law.inlet(outlet);
        }

        @Override
        public DoubleStream bends() {
            return DoubleStream.of(law.kneePressure());
        }
    }

    private record HoldOff(MeteringValve law) implements InLine {
        @Override
        public double outlet(double inlet) {
            return law.outlet(inlet);
        }

        @Override
        public OptionalDouble inlet(double outlet) {
            return OptionalDouble.of(law.inlet(outlet));
        }

        @Override
        public DoubleStream bends() {
            return DoubleStream.of(law.openingPressure(), law.blendPressure());
        }
    }
}
