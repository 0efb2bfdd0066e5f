package org.brakewright.kernel.structure;

import java.util.stream.IntStream;
import org.brakewright.kernel.structure.section.SecondMoments;
import org.brakewright.kernel.structure.section.Section;

/**
 * Forces and stresses of a beam, in its own axes.
 *
 * @param length m
 * @param start what the node at the start does to the beam
 * @param end what the node at the end does to the beam
 * @param load spread along it, N/m
 */
public record BeamResult(BeamProperty property, double length, Wrench start, Wrench end, Vector3 load) {
    /** Stations looked at for the greatest stress, ends included. */
    private static final int STATIONS = 41;

    /** Tension positive, at the start, N. */
    public double tension() {
        return -start.force().x();
    }

    /**
     * What is passed on through a cut.
     *
     * @param fraction of the length, from the start
     */
    public SectionForces at(double fraction) {
        double x = fraction * length;
        Vector3 force = start.force().plus(load.times(x));
        Vector3 middle = start.force().plus(load.times(x / 2));
        Vector3 moment = start.moment().plus(new Vector3(0, x * middle.z(), -x * middle.y()));
        return new SectionForces(force.times(-1), moment.times(-1));
    }

    /** Stress in a cut. */
    public BeamStress stress(double fraction) {
        SectionForces forces = at(fraction);
        Section section = property.section();
        SecondMoments second = section.bending();
        double spread = second.y() * second.z() - second.product() * second.product();
        double my = forces.moment().y();
        double mz = forces.moment().z();
        double alongY = -(mz * second.y() + my * second.product()) / spread;
        double alongZ = (my * second.z() + mz * second.product()) / spread;
        double axial = forces.force().x() / section.area();
        double[] direct = section.fibres().stream()
                .mapToDouble(fibre -> axial + alongY * fibre.y() + alongZ * fibre.z())
                .sorted()
                .toArray();
        return new BeamStress(
                direct[0],
                direct[direct.length - 1],
                Math.abs(forces.moment().x()) / section.torsionModulus(),
                Math.hypot(forces.force().y(), forces.force().z()) / section.area());
    }

    /** The greatest von Mises stress along the beam, Pa. */
    public double greatestVonMises() {
        return IntStream.range(0, STATIONS)
                .mapToDouble(i -> stress((double) i / (STATIONS - 1)).vonMises())
                .max()
                .orElseThrow();
    }
}
