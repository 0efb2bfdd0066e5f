package org.brakewright.analysis.mount;

import org.brakewright.kernel.fastener.Grip;
import org.brakewright.kernel.fastener.ScrewThread;
import org.brakewright.kernel.structure.SpringRate;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.model.resolved.ResolvedMount.Bolts;

/** Bolts as springs: the clamped joint stays closed, so bolt and parts hold together, tilting on the washer's disc. */
final class BoltSeats {
    /** Of bolt steel, Pa. */
    static final double BOLT_YOUNG = 205e9;

    private BoltSeats() {}

    static ScrewThread thread(Bolts bolts) {
        return ScrewThread.metric(bolts.screw().diameter(), bolts.screw().pitch());
    }

    /**
     * The grip of a bolt.
     *
     * @param young of the clamped parts, Pa
     */
    static Grip grip(Bolts bolts, double young) {
        return new Grip(thread(bolts), bolts.clamped(), young, BOLT_YOUNG);
    }

    /** First axis along the bolt. A disc of radius r on an even bed of stiffness k resists tilt by k r2/4, spin by k r2/2. */
    static SpringRate rate(Bolts bolts, double young) {
        Grip grip = grip(bolts, young);
        double along = grip.boltStiffness() + grip.partStiffness();
        double square = bolts.washer() * bolts.washer() / 4;
        return new SpringRate(
                new Vector3(along, along, along),
                new Vector3(along * square / 2, along * square / 4, along * square / 4));
    }
}
