package org.brakewright.analysis.lines;

import java.util.List;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.PartKind;
import org.brakewright.model.resolved.ResolvedLines.Spot;

/**
 * The lines of a car.
 *
 * @param tubes one for each tube, as the bender makes it
 * @param joints both ends of every tube and hose
 * @param hoses one for each hose
 * @param cuts lengths of stock and what is cut of each
 * @param parts what lines are joined to, with what feeds it
 * @param air where air stays
 * @param bleeding steps in order
 */
public record LinesState(
        List<TubeState> tubes,
        List<JointState> joints,
        List<HoseState> hoses,
        List<CutState> cuts,
        List<PartState> parts,
        List<AirTrap> air,
        List<BleedStep> bleeding) {

    /**
     * A joint.
     *
     * @param line tube or hose
     * @param atStart whether it is the start of the line
     * @param part it goes to
     * @param form of the end
     * @param nut its thread; "none" for an end without a nut
     * @param seat in the port
     * @param portThread of the port; "not told" when not given
     * @param misfits every reason against it; empty where they mate
     */
    public record JointState(
            String line,
            boolean atStart,
            String part,
            String form,
            String nut,
            String seat,
            String portThread,
            List<Misfit> misfits) {}

    /**
     * A hose.
     *
     * @param name the builder's
     * @param circuit it belongs to
     * @param lengthM free
     * @param straightM between its parts, in a straight line at rest
     */
    public record HoseState(String name, Circuit circuit, double lengthM, double straightM) {}

    /**
     * What is cut of one kind of tube.
     *
     * @param material of the tube
     * @param outsideDiameterM of the tube
     * @param wallM of the tube
     * @param bars lengths bought
     * @param boughtM all bought
     * @param leastM that no plan can beat
     */
    public record CutState(
            String material, double outsideDiameterM, double wallM, List<Bar> bars, double boughtM, double leastM) {}

    /**
     * A length of stock.
     *
     * @param stockM bought
     * @param tubes cut of it, in order
     * @param leftM over
     */
    public record Bar(double stockM, List<String> tubes, double leftM) {}

    /**
     * A part.
     *
     * @param name the builder's
     * @param kind what it is
     * @param circuit that feeds it
     * @param wayM of tube and hose from its master
     * @param at its place
     * @param bleeder whether it has one
     */
    public record PartState(String name, PartKind kind, Circuit circuit, double wayM, Spot at, boolean bleeder) {}

    /**
     * A place where air stays.
     *
     * @param where tube, hose or part
     * @param kind why it stays
     * @param at its place
     * @param riseM how far air has to be pushed down before it can rise to a bleeder or a reservoir
     */
    public record AirTrap(String where, AirKind kind, Spot at, double riseM) {}

    /** Why air stays. */
    public enum AirKind {
        /** Fluid flows past while bleeding, but air rises back. */
        HIGH_POINT,
        /** Nothing flows past. */
        CLOSED_END
    }

    /**
     * A step of bleeding.
     *
     * @param bleeders opened in this step: one, or one of each circuit of a balance bar
     * @param wayM of tube and hose from the master, of the first
     */
    public record BleedStep(List<String> bleeders, double wayM) {}
}
