package org.brakewright.analysis.hydraulics;

import java.util.stream.DoubleStream;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * Masters with air in one circuit: its piston goes on until it bottoms, or a balance bar meets its largest tilt. From
 * there it stands as that of an open circuit does, but keeps the pressure that it has come to.
 *
 * @param airy the masters with the air, as if none ever bottomed
 * @param open the same masters with that circuit open
 * @param piston whose circuit has the air
 */
record AiredChain(ApplyChain airy, ApplyChain open, AxleEnd piston) implements ApplyChain {

    static ApplyChain of(ApplyChain whole, AxleEnd piston, double share) {
        return new AiredChain(whole.aired(piston, share), whole.failed(piston), piston);
    }

    @Override
    public ApplyState at(double thrust) {
        ApplyState free = airy.at(thrust);
        ApplyState ended = open.at(thrust);
        PistonState pushed = soft(free);
        double end = soft(ended).stroke();
        if (pushed.stroke() <= end) {
            return free;
        }
        Piston soft = piston == AxleEnd.FRONT ? front() : rear();
        PistonState kept = new PistonState(soft(ended).push(), soft.pressureAt(end, pushed.pressure()), end);
        return new ApplyState(
                piston == AxleEnd.FRONT ? kept : ended.front(),
                piston == AxleEnd.FRONT ? ended.rear() : kept,
                ended.rodTravel(),
                ended.bar());
    }

    private PistonState soft(ApplyState state) {
        return piston == AxleEnd.FRONT ? state.front() : state.rear();
    }

    /** Of the other piston: this one may lean on its end, where its pressure and its push have nothing to do with each other. */
    @Override
    public double imbalance(ApplyState state) {
        return open.imbalance(state);
    }

    @Override
    public DoubleStream bends() {
        return DoubleStream.concat(airy.bends(), open.bends());
    }

    @Override
    public boolean straight() {
        return false;
    }

    @Override
    public ApplyChain unassisted() {
        return new AiredChain(airy.unassisted(), open.unassisted(), piston);
    }

    @Override
    public ApplyChain failed(AxleEnd circuit) {
        return airy.failed(circuit);
    }

    @Override
    public ApplyChain aired(AxleEnd circuit, double share) {
        return new AiredChain(airy.aired(circuit, share), open.aired(circuit, share), piston);
    }

    @Override
    public boolean endsPush(AxleEnd circuit) {
        return circuit != piston;
    }

    @Override
    public Piston front() {
        return airy.front();
    }

    @Override
    public Piston rear() {
        return airy.rear();
    }

    @Override
    public double rodTravelPerStroke(AxleEnd circuit) {
        return airy.rodTravelPerStroke(circuit);
    }
}
