package org.brakewright.analysis.hydraulics;

import java.util.stream.DoubleStream;
import org.brakewright.analysis.hydraulics.ApplyState.BarStance;
import org.brakewright.kernel.lever.BarEnd;
import org.brakewright.kernel.lever.FailedBar;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * Two masters under a balance bar, one circuit open: its rod runs ahead until its master bottoms or the bar meets its
 * largest tilt.
 *
 * <p>While the failed master stands at its end, the bar leans on it and the live one keeps its share of the push. A bar
 * bound at its largest tilt would pass on more; that is not counted on.
 *
 * @param whole the masters with both circuits tight
 * @param open the master whose circuit is open
 */
public record FailedTwinChain(TwinChain whole, AxleEnd open) implements ApplyChain {

    @Override
    public ApplyState at(double thrust) {
        PistonState live = live().at(thrust * liveShare());
        PistonState failed = new PistonState(thrust * (1 - liveShare()), 0, failedStroke(live.stroke()));
        PistonState front = open == AxleEnd.FRONT ? failed : live;
        PistonState rear = open == AxleEnd.FRONT ? live : failed;
        double tilt = tilt(front.stroke(), rear.stroke());
        return new ApplyState(
                front,
                rear,
                whole.bearingTravel(front.stroke(), rear.stroke(), tilt),
                new BarStance(Math.tan(tilt), whole.bar().frontShare()));
    }

    @Override
    public double imbalance(ApplyState state) {
        return live().imbalance(open == AxleEnd.FRONT ? state.rear() : state.front());
    }

    /** Where the bar ends with the live master at a stroke (m); its travels are those of the clevises from square. */
    public FailedBar fallen(double liveStroke) {
        return whole.bar()
                .failed(
                        open == AxleEnd.FRONT ? BarEnd.FRONT : BarEnd.REAR,
                        liveStroke + liveClevisAhead(),
                        mostStroke() + failedClevisAhead(),
                        whole.limits().tilt());
    }

    /** Stroke (m) of the failed master; 0 when the bar already rests beyond its largest tilt. */
    private double failedStroke(double liveStroke) {
        FailedBar bar = fallen(liveStroke);
        double clevis = open == AxleEnd.FRONT ? bar.frontTravel() : bar.rearTravel();
        return switch (bar.stop()) {
            case ARTICULATION -> Math.max(0, clevis - failedClevisAhead());
            case MASTER_BOTTOMED -> mostStroke();
        };
    }

    private double mostStroke() {
        return open == AxleEnd.FRONT
                ? whole.limits().frontStroke()
                : whole.limits().rearStroke();
    }

    private double failedClevisAhead() {
        return open == AxleEnd.FRONT ? whole.frontClevisAhead(largestTilt()) : whole.rearClevisAhead(largestTilt());
    }

    private double liveClevisAhead() {
        return open == AxleEnd.FRONT ? whole.rearClevisAhead(largestTilt()) : whole.frontClevisAhead(largestTilt());
    }

    /** Largest tilt (rad) toward the failed rod. */
    private double largestTilt() {
        return open == AxleEnd.FRONT ? whole.limits().tilt() : -whole.limits().tilt();
    }

    /** Tilt (rad) that fits the rods as they swing at it. */
    private double tilt(double frontStroke, double rearStroke) {
        double square = whole.tilt(frontStroke, rearStroke, 0);
        return whole.rods().keepShare()
                ? square
                : Crossing.rising(
                        tilt -> tilt - whole.tilt(frontStroke, rearStroke, tilt),
                        TwinChain.TILTS,
                        square,
                        largestTilt());
    }

    @Override
    public DoubleStream bends() {
        return live().bends().map(push -> push / liveShare());
    }

    @Override
    public boolean straight() {
        return live().spring().rate() == 0;
    }

    @Override
    public ApplyChain unassisted() {
        return this;
    }

    @Override
    public ApplyChain failed(AxleEnd piston) {
        return new FailedTwinChain(whole, piston);
    }

    @Override
    public ApplyChain aired(AxleEnd piston, double share) {
        return new FailedTwinChain(whole.aired(piston, share), open);
    }

    @Override
    public Piston front() {
        return open == AxleEnd.FRONT ? whole.front().opened() : whole.front();
    }

    @Override
    public Piston rear() {
        return open == AxleEnd.REAR ? whole.rear().opened() : whole.rear();
    }

    @Override
    public double rodTravelPerStroke(AxleEnd piston) {
        return whole.rodTravelPerStroke(piston);
    }

    private Piston live() {
        return open == AxleEnd.FRONT ? whole.rear() : whole.front();
    }

    private double liveShare() {
        return open == AxleEnd.FRONT
                ? 1 - whole.bar().frontShare()
                : whole.bar().frontShare();
    }
}
