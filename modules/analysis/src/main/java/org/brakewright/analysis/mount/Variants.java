package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.analysis.mount.MountState.VariantState;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/** The same car bare, patched, doubled and braced, as far as that differs and stands. */
final class Variants {
    private final Structure whole;
    private final Stiffening stiffening;

    Variants(Structure whole, Stiffening stiffening) {
        this.whole = whole;
        this.stiffening = stiffening;
    }

    List<VariantState> states() {
        List<VariantState> states = new ArrayList<>();
        Structure before = null;
        for (Dress dress : Dress.values()) {
            Structure dressed = dressed(whole, dress);
            Optional<Double> give = dressed.equals(before) ? Optional.empty() : stiffening.give(dressed);
            before = dressed;
            give.ifPresent(found -> states.add(new VariantState(
                    dress, stiffening.added(dressed), stiffening.stiffness(found), stiffening.padInUse(found))));
        }
        return List.copyOf(states);
    }

    /** A mount with so much of what is told. */
    static Structure dressed(Structure whole, Dress dress) {
        List<Plate> plates = whole.plates().stream()
                .filter(plate -> dress.compareTo(plate.lay() == Lay.REPLACES ? Dress.PATCHED : Dress.DOUBLED) >= 0)
                .toList();
        boolean braced = dress == Dress.BRACED;
        return new Structure(
                whole.panel(),
                plates,
                whole.brackets(),
                braced ? whole.stringers() : List.of(),
                braced ? whole.crossTube() : Optional.empty(),
                whole.pivot());
    }
}
