package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.brakewright.model.Build;

/** Guesses what a builder meant by a word that is not known. */
final class KeyAdvice {
    private static final int LONGEST = 40;
    private static final int MOST_PLACES = 3;
    private static final Map<String, List<String>> HOMES = homes();

    private KeyAdvice() {}

    /** A question or a hint that follows "unknown key"; empty when nothing comes near. */
    static String about(String key, Collection<String> known) {
        String plain = plain(key);
        Optional<String> near = nearest(plain, known);
        if (near.isPresent()) {
            return "; did you mean `" + near.get() + "`?";
        }
        List<String> homes = HOMES.getOrDefault(plain, List.of());
        if (!homes.isEmpty()) {
            return "; it belongs in "
                    + String.join(" or ", homes.stream().limit(MOST_PLACES).toList());
        }
        return key.matches("[\\d.].*")
                ? "; inside { } and [ ] a comma ends the value, so write numbers without one"
                : "";
    }

    /** The known word nearest to one that is not; empty when none is near. */
    static Optional<String> nearest(String word, Collection<String> known) {
        String plain = plain(word);
        int allowed = Math.max(1, Math.min(3, plain.length() / 3));
        return plain.length() > LONGEST
                ? Optional.empty()
                : known.stream()
                        .filter(other -> distance(plain, other) <= allowed)
                        .min(Comparator.comparingInt(other -> distance(plain, other)));
    }

    /** A word as keys and choices are compared: lower case, with one underscore for each blank, dot and hyphen. */
    static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[ .-]", "_");
    }

    /** Letters to insert, drop, change or swap (restricted Damerau-Levenshtein distance). */
    static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, i, j, from.charAt(i - 1) != to.charAt(j - 1));
                if (i > 1 && j > 1 && swapped(from, i, to, j)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, int i, int j, boolean differ) {
        int dropOrInsert = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
        return Math.min(dropOrInsert, cost[i - 1][j - 1] + (differ ? 1 : 0));
    }

    private static boolean swapped(String from, int i, String to, int j) {
        return from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
    }

    private static Map<String, List<String>> homes() {
        Map<String, List<String>> homes = new HashMap<>();
        collect(Build.class, "", "", homes);
        return homes;
    }

    private static void collect(Class<?> section, String path, String note, Map<String, List<String>> homes) {
        if (section.isSealed()) {
            Slot.kinds(section).forEach((kind, record) -> collect(record, path, " with kind: " + kind, homes));
            return;
        }
        for (Slot slot : Slot.of(section)) {
            String home = (path.isEmpty() ? "the top level of the file" : "`" + path + "`") + note;
            homes.computeIfAbsent(slot.key(), _ -> new ArrayList<>()).add(home);
            if (slot.nested()) {
                collect(slot.type(), Paths.child(path, slot.key()) + (slot.list() ? "[]" : ""), note, homes);
            }
        }
    }
}
