package org.brakewright.analysis.resolve;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.brakewright.model.mount.OwnMaterial;
import org.brakewright.model.mount.StockMaterial;
import org.brakewright.model.resolved.ResolvedMount.Material;
import org.jspecify.annotations.Nullable;

/** Finds materials by the name that a part calls them by: the builder's own first, then those known here. */
final class MountMaterials {
    private final Values values;
    private final Map<String, Material> known = new LinkedHashMap<>();

    MountMaterials(Values values, @Nullable List<OwnMaterial> own) {
        this.values = values;
        Arrays.stream(StockMaterial.values()).map(MountMaterials::stock).forEach(this::add);
        ResolveMount.all(own).stream().map(this::own).forEach(this::add);
    }

    private void add(Material material) {
        known.put(plain(material.name()), material);
    }

    /** The material of a part; one of its kind, and a fault, when nobody knows the name. */
    Material of(String name, String path) {
        Material found = known.get(plain(name));
        if (found == null) {
            values.problem(
                    path,
                    name,
                    "Nothing is known of this material: neither here nor in mount.materials.",
                    String.join(", ", known.keySet()) + ", or data under mount.materials");
            return stock(StockMaterial.MILD_STEEL);
        }
        return found;
    }

    private static Material stock(StockMaterial stock) {
        return new Material(
                plain(stock.name()),
                stock.family(),
                stock.young(),
                stock.family().poisson(),
                stock.density(),
                stock.yieldStress(),
                stock.tensileStrength(),
                stock.source() + " (from memory)");
    }

    private Material own(OwnMaterial own) {
        return new Material(
                own.name(),
                own.family(),
                values.need(own.young()),
                own.family().poisson(),
                values.need(own.density()),
                values.need(own.yieldStress()),
                values.need(own.tensileStrength()),
                "the builder's own data");
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_");
    }
}
