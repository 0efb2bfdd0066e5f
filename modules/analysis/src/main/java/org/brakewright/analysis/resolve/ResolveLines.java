package org.brakewright.analysis.resolve;

import org.brakewright.model.hydraulics.Fluid;
import org.brakewright.model.hydraulics.Line;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.resolved.ResolvedCircuit.Reservoir;
import org.jspecify.annotations.Nullable;

/** Completes lines, fluid and reservoirs. */
final class ResolveLines {
    private static final Line UNKNOWN_LINE = new Line(null, null, null, null, null, null, null, null, null, null);
    private static final Fluid UNKNOWN_FLUID = new Fluid(null, null, null, null, null);

    private final Values values;

    ResolveLines(Values values) {
        this.values = values;
    }

    /**
     * The fluid of both circuits.
     *
     * @param bulkModulus Pa
     * @param freeAir share of the volume
     */
    record Filling(double bulkModulus, double freeAir) {}

    Filling filling(@Nullable Fluid given) {
        Fluid fluid = given == null ? UNKNOWN_FLUID : given;
        return new Filling(
                values.take(fluid.bulkModulus(), "fluid.bulk_modulus", Defaults.bulkModulus(fluid.grade())),
                values.take(fluid.freeAir(), "fluid.free_air", Defaults.FREE_AIR));
    }

    ResolvedCircuit circuit(String end, @Nullable Line given, Filling filling) {
        Line line = given == null ? UNKNOWN_LINE : given;
        String path = "lines." + end;
        ResolveTube.Section tube = new ResolveTube(values).section(path, line.tubeOutsideDiameter(), line.tubeWall());
        return new ResolvedCircuit(
                values.take(line.tubeLength(), path + ".tube_length", Defaults.TUBE_LENGTH),
                tube.outside(),
                tube.wall(),
                values.take(line.tubeModulus(), path + ".tube_modulus", Defaults.TUBE_MODULUS),
                values.take(line.hoseLength(), path + ".hose_length", Defaults.HOSE_LENGTH),
                values.take(line.hoseExpansion(), path + ".hose_expansion", Defaults.HOSE_EXPANSION),
                values.take(line.trappedVolume(), path + ".trapped_volume", Defaults.TRAPPED_VOLUME),
                filling.bulkModulus(),
                filling.freeAir(),
                values.maybe(line.residualValve()),
                new Reservoir(values.maybe(line.levelAboveBrakes()), values.maybe(line.reservoirVolume())));
    }
}
