package org.brakewright.quantity;

import java.util.List;
import java.util.regex.Pattern;

/** A comma parts thousands for one reader and decimals for another, so it is never guessed at. */
final class Commas {
    private static final Pattern THOUSANDS = Pattern.compile("(?<!\\d)[1-9]\\d{0,2}(,\\d{3})+(?!\\d)");
    private static final Pattern MANY = Pattern.compile(",.*,|\\.");

    private Commas() {}

    static void refuse(String text) {
        if (text.indexOf(',') < 0) {
            return;
        }
        List<String> offers = offers(text);
        throw new Refusal(
                "The comma in \"" + text + "\" can be read in two ways; write " + String.join(" or ", offers) + ".",
                offers);
    }

    private static List<String> offers(String text) {
        String without = text.replace(",", "");
        String point = text.replace(',', '.');
        if (!THOUSANDS.matcher(text).find()) {
            return List.of(point);
        }
        return MANY.matcher(text).find() ? List.of(without) : List.of(without, point);
    }
}
