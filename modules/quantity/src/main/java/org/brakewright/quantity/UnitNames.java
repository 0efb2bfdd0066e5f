package org.brakewright.quantity;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds units by their spelling.
 *
 * <p>A spelling counts as typed; when nothing fits, capitals are overlooked, but never for a unit with a capital M: a
 * mega unit and a milli unit must not be taken for one another.
 */
final class UnitNames {
    private static final Pattern JOINT = Pattern.compile("(?<=[\\p{L}\\d°])[-·⋅*](?=[\\p{L}°])");
    private static final Pattern FILLING = Pattern.compile("[\\s.^()]");
    private static final Map<Dimension, Map<String, Unit>> EXACT = new EnumMap<>(Dimension.class);
    private static final Map<Dimension, Map<String, Unit>> LOOSE = new EnumMap<>(Dimension.class);

    static {
        for (Unit unit : Unit.values()) {
            for (String name : unit.names()) {
                enter(unit, bare(name));
            }
        }
    }

    private UnitNames() {}

    private static void enter(Unit unit, String name) {
        EXACT.computeIfAbsent(unit.dimension(), key -> new HashMap<>()).put(name, unit);
        if (unit.symbol().indexOf('M') < 0) {
            LOOSE.computeIfAbsent(unit.dimension(), key -> new HashMap<>()).put(lower(name), unit);
        }
    }

    static Optional<Unit> find(String text, Dimension dimension) {
        String name = bare(PlainText.of(text));
        Unit exact = EXACT.getOrDefault(dimension, Map.of()).get(name);
        return Optional.ofNullable(
                exact != null ? exact : LOOSE.getOrDefault(dimension, Map.of()).get(lower(name)));
    }

    /** All dimensions in which the text names a unit. */
    static List<Dimension> dimensionsOf(String text) {
        return Arrays.stream(Dimension.values())
                .filter(dimension -> find(text, dimension).isPresent())
                .toList();
    }

    /** The unit of the dimension whose spelling is nearest to the text, if it is near enough to be a slip. */
    static Optional<Unit> nearest(String text, Dimension dimension) {
        String name = lower(bare(PlainText.of(text)));
        Optional<Unit> best = Optional.empty();
        int least = 1 + name.length() / 3;
        for (Unit unit : Unit.of(dimension)) {
            for (String candidate : unit.names()) {
                int distance = Spelling.distance(name, lower(bare(candidate)));
                if (distance < least) {
                    least = distance;
                    best = Optional.of(unit);
                }
            }
        }
        return best;
    }

    private static String bare(String name) {
        return FILLING.matcher(JOINT.matcher(name).replaceAll("")).replaceAll("");
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
