package org.brakewright.analysis.pedal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.analysis.hydraulics.CircuitVolume;
import org.brakewright.analysis.pedal.TravelShare.Where;
import org.brakewright.kernel.lever.BalanceBar;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedPedal;

/** How far the pedal goes for a state of the chain, and what takes it. */
public final class TravelModel {
    private final ResolvedPedal pedal;
    private final CircuitVolume front;
    private final CircuitVolume rear;
    private final Geometry geometry;

    private TravelModel(ResolvedPedal pedal, CircuitVolume front, CircuitVolume rear, Geometry geometry) {
        this.pedal = pedal;
        this.front = front;
        this.rear = rear;
        this.geometry = geometry;
    }

    /** The travel of a build's pedal. */
    public static TravelModel of(ResolvedBuild build) {
        return new TravelModel(
                build.pedal(),
                CircuitVolume.of(build.front(), build.frontCircuit()),
                CircuitVolume.of(build.rear(), build.rearCircuit()),
                Geometry.of(build.apply()));
    }

    /** Travel at a state of the chain. */
    public Travel at(ChainState state) {
        return travel(state.pedalForce(), frontStroke(state.frontPressure()), rearStroke(state.rearPressure()));
    }

    /** Stroke (m) that the front circuit takes of its master or chamber at a pressure (Pa). */
    public double frontStroke(double pressure) {
        return geometry.frontStroke(front.total(pressure));
    }

    /** Stroke (m) that the rear circuit takes of its master or chamber at a pressure (Pa). */
    public double rearStroke(double pressure) {
        return geometry.rearStroke(rear.total(pressure));
    }

    /** Travel for given strokes (m) of the two masters. */
    public Travel travel(double pedalForce, double frontStroke, double rearStroke) {
        double pad = pedal.freePlay()
                + pedal.ratio() * geometry.rodTravel(frontStroke, rearStroke)
                + pedalForce / pedal.mountStiffness();
        return new Travel(pad, frontStroke, rearStroke);
    }

    /** The same travel by cause, largest first; the shares add up to {@link Travel#padM()}. */
    public List<TravelShare> budget(ChainState state) {
        List<TravelShare> shares = new ArrayList<>();
        shares.add(new TravelShare(Where.PEDAL, Cause.FREE_PLAY, 0, pedal.freePlay()));
        shares.add(new TravelShare(Where.PEDAL, Cause.LOST_STROKE, 0, pedal.ratio() * geometry.lostRodTravel()));
        shares.add(new TravelShare(Where.PEDAL, Cause.MOUNT, 0, state.pedalForce() / pedal.mountStiffness()));
        add(shares, Where.FRONT, front.byCause(state.frontPressure()), geometry.frontRodTravelPerVolume());
        add(shares, Where.REAR, rear.byCause(state.rearPressure()), geometry.rearRodTravelPerVolume());
        shares.sort((a, b) -> Double.compare(b.padTravelM(), a.padTravelM()));
        return List.copyOf(shares);
    }

    private void add(List<TravelShare> shares, Where where, Map<Cause, Double> volumes, double rodTravelPerVolume) {
        volumes.forEach((cause, volume) ->
                shares.add(new TravelShare(where, cause, volume, pedal.ratio() * rodTravelPerVolume * volume)));
    }

    /** How volumes become strokes and strokes become travel of the pedal's rod. */
    private sealed interface Geometry {
        static Geometry of(ResolvedApply apply) {
            return switch (apply) {
                case ResolvedApply.Twin twin ->
                    new Twin(
                            new BalanceBar(
                                    twin.bar().clevisSpacing(), twin.bar().offset()),
                            twin.front(),
                            twin.rear());
                case ResolvedApply.Tandem tandem -> new Tandem(tandem.master());
            };
        }

        double frontStroke(double frontVolume);

        double rearStroke(double rearVolume);

        double rodTravel(double frontStroke, double rearStroke);

        double lostRodTravel();

        double frontRodTravelPerVolume();

        double rearRodTravelPerVolume();
    }

    private record Twin(BalanceBar bar, Master front, Master rear) implements Geometry {
        @Override
        public double frontStroke(double frontVolume) {
            return front.lostStroke() + frontVolume / front.area();
        }

        @Override
        public double rearStroke(double rearVolume) {
            return rear.lostStroke() + rearVolume / rear.area();
        }

        @Override
        public double rodTravel(double frontStroke, double rearStroke) {
            return bar.bearingTravel(frontStroke, rearStroke);
        }

        @Override
        public double lostRodTravel() {
            return bar.bearingTravel(front.lostStroke(), rear.lostStroke());
        }

        @Override
        public double frontRodTravelPerVolume() {
            return bar.frontShare() / front.area();
        }

        @Override
        public double rearRodTravelPerVolume() {
            return (1 - bar.frontShare()) / rear.area();
        }
    }

    /** Each chamber gives its own circuit; the pushrod travels the sum of both chambers' strokes. */
    private record Tandem(Master master) implements Geometry {
        @Override
        public double frontStroke(double frontVolume) {
            return master.lostStroke() / 2 + frontVolume / master.area();
        }

        @Override
        public double rearStroke(double rearVolume) {
            return master.lostStroke() / 2 + rearVolume / master.area();
        }

        @Override
        public double rodTravel(double frontStroke, double rearStroke) {
            return frontStroke + rearStroke;
        }

        @Override
        public double lostRodTravel() {
            return master.lostStroke();
        }

        @Override
        public double frontRodTravelPerVolume() {
            return 1 / master.area();
        }

        @Override
        public double rearRodTravelPerVolume() {
            return 1 / master.area();
        }
    }
}
