package org.brakewright.app.words;

/** Laws in words: name, formula, source. */
public final class LawWords {
    private static final Catalogue WORDS = Catalogue.of("workings.properties");

    private LawWords() {}

    /** Plain name of a law. */
    public static String name(String law) {
        return WORDS.get(law + ".name");
    }

    /** Its formula. */
    public static String formula(String law) {
        return WORDS.get(law + ".formula");
    }

    /** Where it comes from. */
    public static String source(String law) {
        return WORDS.get(law + ".source");
    }
}
