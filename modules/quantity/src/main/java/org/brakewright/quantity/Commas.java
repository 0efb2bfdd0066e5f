package org.brakewright.quantity;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A comma parts thousands for one reader and decimals for another, so it is never guessed at. */
final class Commas {
    private static final Pattern THOUSANDS = Pattern.compile("(?<!\\d)[1-9]\\d{0,2}(,\\d{3})+(?!\\d)");
    private static final Pattern DECIMAL = Pattern.compile("(?:[^,.]*(?<!\\d)\\d+,\\d+(?![,.\\d]))+[^,]*");

    private Commas() {}

    static void refuse(String text) {
        if (text.indexOf(',') < 0) {
            return;
        }
        List<String> offers = offers(text);
        String cure = offers.isEmpty() ? "write a point for decimals" : "write " + String.join(" or ", offers);
        throw new Refusal("The comma in \"" + text + "\" may part thousands or decimals; " + cure + ".", offers);
    }

    private static List<String> offers(String text) {
        String without = text.replace(",", "");
        String point = text.replace(',', '.');
        boolean thousands = THOUSANDS.matcher(text).find();
        boolean decimal = DECIMAL.matcher(text).matches();
        return Stream.of(thousands ? without : "", decimal ? point : "")
                .filter(offer -> !offer.isEmpty())
                .toList();
    }
}
