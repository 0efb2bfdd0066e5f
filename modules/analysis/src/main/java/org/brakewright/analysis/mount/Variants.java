package org.brakewright.analysis.mount;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        Map<Structure, Dress> differing = new LinkedHashMap<>();
        for (Dress dress : Dress.values()) {
            differing.putIfAbsent(dressed(whole, dress), dress);
        }
        return List.copyOf(differing.values()).parallelStream()
                .map(this::state)
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<VariantState> state(Dress dress) {
        Structure dressed = dressed(whole, dress);
        return stiffening
                .give(dressed)
                .map(found -> new VariantState(
                        dress, stiffening.added(dressed), stiffening.stiffness(found), stiffening.padInUse(found)));
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
