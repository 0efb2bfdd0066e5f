package org.brakewright.analysis.chain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.analysis.hydraulics.Piston;
import org.brakewright.analysis.hydraulics.PistonState;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.pedal.TravelShare.Where;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.vehicle.AxleEnd;

/** Takes the pedal's travel apart by cause. Where the ratio changes on the way, its mean over the way counts. */
public final class TravelBudget {
    private final Chain chain;
    private final double meanRatio;
    private final List<TravelShare> shares = new ArrayList<>();

    private TravelBudget(Chain chain, double meanRatio) {
        this.chain = chain;
        this.meanRatio = meanRatio;
    }

    /** The travel of a pushed pedal by cause, largest first; the shares add up to {@link Pushed#padTravel()}. */
    public static List<TravelShare> of(ResolvedPedal pedal, Chain chain, Pushed pushed) {
        double rodTravel = pushed.apply().rodTravel() + pedal.slack();
        double meanRatio = rodTravel > 0
                ? pushed.lever().padTravel() / rodTravel
                : pushed.lever().ratio();
        TravelBudget budget = new TravelBudget(chain, meanRatio);
        double force = pushed.state().pedalForce();
        budget.atPedal(Cause.FREE_PLAY, pedal.freePlay());
        budget.atPedal(Cause.SLACK, meanRatio * pedal.slack());
        budget.atPedal(Cause.MOUNT, force / pedal.mountStiffness());
        budget.atPedal(Cause.ARM, force / pedal.armStiffness());
        budget.masters(pushed);
        budget.shares.sort(Comparator.comparingDouble(TravelShare::padTravelM).reversed());
        return List.copyOf(budget.shares);
    }

    private void atPedal(Cause cause, double padTravel) {
        shares.add(new TravelShare(Where.PEDAL, cause, 0, padTravel));
    }

    private void masters(Pushed pushed) {
        Moved front = new Moved(
                chain.apply().front(),
                pushed.apply().front(),
                meanRatio * chain.apply().rodTravelPerStroke(AxleEnd.FRONT));
        Moved rear = new Moved(
                chain.apply().rear(),
                pushed.apply().rear(),
                meanRatio * chain.apply().rodTravelPerStroke(AxleEnd.REAR));
        double byStrokes = front.padTravel() + rear.padTravel();
        atPedal(Cause.LOST_STROKE, byStrokes - front.padTravelByFluid() - rear.padTravelByFluid());
        atPedal(Cause.BAR, meanRatio * pushed.apply().rodTravel() - byStrokes);
        inLine(AxleEnd.FRONT, Where.FRONT, front, rear);
        inLine(AxleEnd.REAR, Where.REAR, front, rear);
    }

    private void inLine(AxleEnd axle, Where where, Moved front, Moved rear) {
        Map<Cause, Double> byFront = front.volumes(axle);
        Map<Cause, Double> byRear = rear.volumes(axle);
        for (Cause cause : Cause.values()) {
            double fromFront = byFront.getOrDefault(cause, 0.0);
            double fromRear = byRear.getOrDefault(cause, 0.0);
            if (fromFront + fromRear != 0) {
                double travel = fromFront * front.padTravelPerVolume() + fromRear * rear.padTravelPerVolume();
                shares.add(new TravelShare(where, cause, fromFront + fromRear, travel));
            }
        }
    }

    /**
     * A piston that has moved.
     *
     * @param piston what it fills
     * @param state where it stands
     * @param padTravelPerStroke at the pad
     */
    private record Moved(Piston piston, PistonState state, double padTravelPerStroke) {
        double padTravel() {
            return padTravelPerStroke * state.stroke();
        }

        double padTravelByFluid() {
            return fills() ? padTravelPerStroke * (piston.stroke(state.pressure()) - piston.lostStroke()) : 0;
        }

        double padTravelPerVolume() {
            return padTravelPerStroke / piston.area();
        }

        Map<Cause, Double> volumes(AxleEnd axle) {
            double share = piston.feeds().share(axle);
            Map<Cause, Double> volumes = new EnumMap<>(Cause.class);
            if (share > 0 && fills()) {
                piston.feeds()
                        .line(axle)
                        .byCause(state.pressure())
                        .forEach((cause, volume) -> volumes.put(cause, share * volume));
            }
            return volumes;
        }

        /** Whether the port is closed. */
        private boolean fills() {
            return state.pressure() > 0 || state.stroke() >= piston.stroke(0);
        }
    }
}
