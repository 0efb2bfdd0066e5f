package org.brakewright.app.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences by key, with places in braces for values. */
public final class Catalogue {
    private static final Pattern PLACE = Pattern.compile("\\{([^}]+)}");

    private final Properties sentences = new Properties();

    private Catalogue(String resource) {
        try (InputStream in = Catalogue.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no catalogue " + resource);
            }
            sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The catalogue of a resource beside this class. */
    static Catalogue of(String resource) {
        return new Catalogue(resource);
    }

    /** Keys of all sentences. */
    Set<String> keys() {
        return new TreeSet<>(sentences.stringPropertyNames());
    }

    /** The sentence of a key as it stands. */
    Optional<String> find(String key) {
        return Optional.ofNullable(sentences.getProperty(key));
    }

    /**
     * The sentence of a key as it stands.
     *
     * @throws IllegalArgumentException when there is none
     */
    String get(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no words for " + key));
    }

    /** The sentence of a key, each place filled by the function of its name. */
    String fill(String key, UnaryOperator<String> values) {
        return fillIn(get(key), values);
    }

    private static String fillIn(String sentence, UnaryOperator<String> values) {
        Matcher places = PLACE.matcher(sentence);
        StringBuilder filled = new StringBuilder();
        while (places.find()) {
            places.appendReplacement(filled, Matcher.quoteReplacement(values.apply(places.group(1))));
        }
        return places.appendTail(filled).toString();
    }
}
