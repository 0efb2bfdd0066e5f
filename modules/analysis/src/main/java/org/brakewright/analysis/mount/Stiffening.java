package org.brakewright.analysis.mount;

import java.util.Optional;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.model.resolved.ResolvedMount.CrossTube;
import org.brakewright.model.resolved.ResolvedMount.Near;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Profile;
import org.brakewright.model.resolved.ResolvedMount.Stringer;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/**
 * How far other structures give way under the same pedal, and what they weigh.
 *
 * @param mesh that all are compared on
 * @param arm give of the pedal's arm, m/N
 * @param inUse foot force in use, N
 */
record Stiffening(PanelMesh mesh, PedalForces pedal, double arm, double inUse) {

    /** Movement of the pad over the foot's force, without the arm, m/N; empty when it does not stand. */
    Optional<Double> give(Structure structure) {
        return Settling.on(structure, mesh) instanceof Settled.Firm firm
                ? Optional.of(firm.give(structure, pedal))
                : Optional.empty();
    }

    /** Foot force over movement of the pad, with the arm, N/m. */
    double stiffness(double give) {
        return 1 / (give + arm);
    }

    /** With the arm, m. */
    double padInUse(double give) {
        return (give + arm) * inUse;
    }

    /** Kilograms of plates and bars. */
    double added(Structure structure) {
        double plates = structure.plates().stream()
                .mapToDouble(plate -> mass(plate, structure))
                .sum();
        double bars = structure.stringers().stream().mapToDouble(this::mass).sum();
        return plates + bars + structure.crossTube().map(this::mass).orElse(0.0);
    }

    /** Of a plate beyond what it replaces, kg. */
    double mass(Plate plate, Structure structure) {
        return PanelSheets.mass(plate, mesh, structure);
    }

    /** kg. */
    double mass(Stringer stringer) {
        Place near = switch (stringer.near()) {
            case Near.OnBracket(String bracket, Place at) -> at;
            case Near.OnPanel(var spot, double foot) -> new Place(0, spot.across(), spot.up());
        };
        return bar(stringer.profile(), near, stringer.body())
                * stringer.material().density();
    }

    /** kg. */
    double mass(CrossTube tube) {
        return bar(tube.profile(), tube.right(), tube.left()) * tube.material().density();
    }

    /** m3. */
    private static double bar(Profile profile, Place from, Place to) {
        double length = PanelFrame.vector(to).minus(PanelFrame.vector(from)).length();
        return Profiles.section(profile).area() * length;
    }
}
