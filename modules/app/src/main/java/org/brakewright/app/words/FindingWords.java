package org.brakewright.app.words;

import java.util.Locale;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.sheets.Wording;
import org.jspecify.annotations.Nullable;

/** Findings in words. */
public final class FindingWords implements Wording {
    private static final Catalogue WORDS = Catalogue.of("findings.properties");

    /** Beyond two more decimals a difference is nothing that anyone could measure. */
    private static final int MOST_MORE = 2;

    private final Show show;

    /** Findings in a system of units. */
    public FindingWords(Show show) {
        this.show = show;
    }

    /** The word of a state: "Stop". */
    public static String word(State state) {
        return WORDS.get("state." + key(state));
    }

    /** Key of a state: "cannot_tell". */
    public static String key(State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String title(Finding finding) {
        return capital(WORDS.fill(finding.key() + ".title", name -> value(finding, name)));
    }

    @Override
    public String sentence(Finding finding) {
        return capital(WORDS.fill(sentenceKey(finding), name -> value(finding, name)));
    }

    static String sentenceKey(Finding finding) {
        String key = finding.key() + "." + key(finding.state());
        return finding.variant().isEmpty() ? key : key + "." + finding.variant();
    }

    /** What to do when no single change was found. */
    public String advice(Finding finding) {
        String key = finding.key() + ".advice";
        return WORDS.find(key + "." + key(finding.state())).orElseGet(() -> WORDS.get(key));
    }

    /** The judged number. */
    public @Nullable String number(Finding finding) {
        return finding.found() == null ? null : asShown(finding, finding.found());
    }

    /** The limit. */
    public @Nullable String limit(Finding finding) {
        return finding.limit() == null ? null : asShown(finding, finding.limit().figure());
    }

    /** A share is shown in per cent where the sentence does so. */
    private String asShown(Finding finding, Figure figure) {
        boolean percent = WORDS.get(sentenceKey(finding)).contains("{found%}");
        return shown(figure, percent, moreDecimals(finding, percent));
    }

    private String shown(Figure figure, boolean percent, int moreDecimals) {
        return percent ? show.percent(figure.value(), moreDecimals) : show.figure(figure, moreDecimals);
    }

    /** How many decimals more it takes until a number that misses its limit by little does not read like the limit. */
    private int moreDecimals(Finding finding, boolean percent) {
        Figure found = finding.found();
        Figure limit = finding.limit() == null ? null : finding.limit().figure();
        if (found == null || limit == null || found.dimension() != limit.dimension()) {
            return 0;
        }
        int more = 0;
        while (more < MOST_MORE && shown(found, percent, more).equals(shown(limit, percent, more))) {
            more++;
        }
        return shown(found, percent, more).equals(shown(limit, percent, more)) ? 0 : more;
    }

    private String value(Finding finding, String place) {
        boolean percent = place.endsWith("%");
        String name = percent ? place.substring(0, place.length() - 1) : place;
        if (name.equals("subject")) {
            return subject(finding.subject());
        }
        boolean judged = name.equals("found") || name.equals("limit");
        return shown(figure(finding, name), percent, judged ? moreDecimals(finding, percent) : 0);
    }

    private static Figure figure(Finding finding, String name) {
        if (name.equals("found") && finding.found() != null) {
            return finding.found();
        }
        if (name.equals("limit") && finding.limit() != null) {
            return finding.limit().figure();
        }
        Figure figure = finding.figures().get(name);
        if (figure == null) {
            throw new IllegalArgumentException(finding.key() + " has no figure " + name);
        }
        return figure;
    }

    private static String subject(String subject) {
        return WORDS.find("subject." + subject).orElse(subject);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
