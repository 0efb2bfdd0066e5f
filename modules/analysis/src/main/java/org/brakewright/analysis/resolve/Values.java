package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Origin;
import org.brakewright.model.Problem;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/**
 * Takes one value after the other out of a build: an override when there is one, else what the builder gave, else the
 * default, which then stands in the ledger. Collects faults that only show when values meet.
 */
final class Values {
    private final Map<String, Double> overrides;
    private final List<Entry> assumed = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    Values(Map<String, Double> overrides) {
        this.overrides = overrides;
    }

    /** A value that the builder had to give. */
    double need(Given given) {
        Double override = overrides.get(given.path());
        return override == null ? given.si() : override;
    }

    /** A value that may be missing and then stays unknown. */
    OptionalDouble maybe(@Nullable Given given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(need(given));
    }

    /** A value that is assumed when missing. */
    double take(@Nullable Given given, String path, Default assumed) {
        Double override = overrides.get(path);
        if (override != null) {
            return override;
        }
        if (given == null) {
            this.assumed.add(new Entry(path, assumed, false));
            return assumed.value();
        }
        if (given.origin() == Origin.ASSUMED) {
            this.assumed.add(new Entry(path, byBuilder(given, assumed), true));
        }
        return given.si();
    }

    /** What stands in the file for a value, for a message. */
    static String written(@Nullable Given given) {
        return given == null ? "assumed" : given.quantity().written();
    }

    /** A friction or brake factor in one state over the working one; assumed as such a share when not given. */
    double share(@Nullable Given given, String path, Default share, double working) {
        double value = take(given, path, FrictionDefaults.of(share, working));
        return given == null && !overridden(path) ? share.value() : value / working;
    }

    /** Whether a trial moves values, none of them below a path: then what stands there was checked before. */
    boolean triesElsewhere(String prefix) {
        return !overrides.isEmpty() && overrides.keySet().stream().noneMatch(path -> path.startsWith(prefix));
    }

    boolean overridden(String path) {
        return overrides.containsKey(path);
    }

    /** Whether any value is being tried. */
    boolean anyOverridden() {
        return !overrides.isEmpty();
    }

    void problem(String path, String value, String message, String allowed) {
        problems.add(new Problem(path, value, message, allowed));
    }

    /** The ledger, named from the catalogue of fields. */
    List<Assumption> ledger() {
        return assumed.stream().map(Entry::named).toList();
    }

    List<Problem> problems() {
        return problems;
    }

    private static Default byBuilder(Given given, Default assumed) {
        double value = given.si();
        if (given.quantity().tolerance() > 0) {
            return new Default(
                    value,
                    given.quantity().low(),
                    given.quantity().high(),
                    "the builder's own guess and range",
                    Tag.BUILDERS_CHOICE);
        }
        double low = Math.min(value, assumed.low());
        double high = Math.max(value, assumed.high());
        return new Default(value, low, high, "the builder's own guess; usual range: " + assumed.basis(), assumed.tag());
    }

    private record Entry(String path, Default assumed, boolean byBuilder) {
        Assumption named() {
            Field field = FieldCatalogue.at(path);
            return new Assumption(
                    path,
                    field.title(),
                    field.dimension(),
                    assumed.value(),
                    assumed.low(),
                    assumed.high(),
                    assumed.basis(),
                    assumed.tag(),
                    byBuilder);
        }
    }
}
