package org.brakewright.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.model.Build;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Origin;
import org.brakewright.model.Problem;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Quantity;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.Reading;
import org.brakewright.quantity.Unit;

/** A car written by key path as a builder would write it; every change gives another car. */
public final class WrittenCar {
    private final Map<String, Object> values;

    private WrittenCar(Map<String, Object> values) {
        this.values = values;
    }

    /** A car of lines "path: value". */
    public static WrittenCar of(String lines) {
        return new WrittenCar(Map.of()).with(lines);
    }

    /** The same car with lines "path: value" put in or replaced. */
    public WrittenCar with(String lines) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        lines.lines().filter(line -> !line.isBlank()).forEach(line -> {
            int colon = line.indexOf(": ");
            changed.put(
                    line.substring(0, colon).strip(), line.substring(colon + 2).strip());
        });
        return new WrittenCar(changed);
    }

    /** The same car with one value in SI put in or replaced. */
    public WrittenCar with(String path, double si) {
        Dimension dimension = FieldCatalogue.at(path).dimension();
        Optional<Unit> unit = dimension == Dimension.RATIO
                ? Optional.empty()
                : Optional.of(Unit.of(dimension).getFirst());
        return put(path, new Given(new Quantity(si, 0, dimension, unit, si + " in SI"), Origin.MEASURED, path));
    }

    /** The same car with one value that the builder calls assumed. */
    public WrittenCar assumed(String path, String written) {
        return put(path, read(path, written, Origin.ASSUMED));
    }

    /** The same car without a value, or without everything below a path. */
    public WrittenCar without(String path) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.keySet().removeIf(key -> key.equals(path) || key.startsWith(path + ".") || key.startsWith(path + "["));
        return new WrittenCar(changed);
    }

    /** The model's records. */
    public Build build() {
        return CarRecords.of(values);
    }

    /** Complete and in SI. */
    public ResolvedBuild resolved() {
        return resolution(Map.of()).build();
    }

    /** Complete and in SI with one value replaced. */
    public ResolvedBuild resolved(String path, double value) {
        return resolution(Map.of(path, value)).build();
    }

    /** What was assumed. */
    public List<Assumption> ledger() {
        return resolution(Map.of()).ledger();
    }

    /** What contradicts. */
    public List<Problem> problems() {
        return switch (Resolve.resolve(build())) {
            case Resolution.Resolved resolved -> List.of();
            case Resolution.Unusable unusable -> unusable.problems();
        };
    }

    /** Every number that follows. */
    public Analysis analysis() {
        return Analyse.analyse(resolved());
    }

    /** The hard stop, which there must be. */
    public HardStop hardStop() {
        return Objects.requireNonNull(analysis().hardStop());
    }

    /** The balance bar, which there must be. */
    public BarState bar() {
        return Objects.requireNonNull(analysis().bar());
    }

    /** The first load case. */
    public LoadCaseResult loadCase() {
        return analysis().loadCases().getFirst();
    }

    static Given read(String path, String written, Origin origin) {
        Field field = FieldCatalogue.at(path);
        return switch (QuantityReader.read(written, field.dimension())) {
            case Reading.Read read -> new Given(read.quantity(), origin, path);
            case Reading.Refused refused -> throw new IllegalArgumentException(path + ": " + refused.reason());
        };
    }

    private Resolution.Resolved resolution(Map<String, Double> overrides) {
        return switch (Resolve.resolve(build(), overrides)) {
            case Resolution.Resolved resolved -> resolved;
            case Resolution.Unusable unusable -> throw new IllegalArgumentException("" + unusable.problems());
        };
    }

    private WrittenCar put(String path, Object value) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.put(path, value);
        return new WrittenCar(changed);
    }
}
