package org.brakewright.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/** Puts a finding together, one thing after the other. */
public final class Judged {
    private final String key;
    private final State state;
    private String subject = "";
    private String variant = "";
    private @Nullable Figure found;
    private @Nullable Limit limit;
    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final List<String> inputs = new ArrayList<>();

    private Judged(String key, State state) {
        this.key = key;
        this.state = state;
    }

    /** Starts a finding of a rule. */
    public static Judged as(State state, Rule rule) {
        return new Judged(rule.key(), state);
    }

    /** What it is about. */
    public Judged about(String what) {
        this.subject = what;
        return this;
    }

    /** Which of several sentences of the state fits. */
    public Judged saying(String which) {
        this.variant = which;
        return this;
    }

    /** The number that was judged. */
    public Judged found(Figure figure) {
        this.found = figure;
        return this;
    }

    /** What it was held against. */
    public Judged against(Figure figure, String whose, Tag tag) {
        this.limit = new Limit(figure, whose, tag);
        return this;
    }

    /** What it was held against. */
    public Judged against(Limit held) {
        this.limit = held;
        return this;
    }

    /** A further value for the sentence. */
    public Judged with(String name, Figure figure) {
        figures.put(name, figure);
        return this;
    }

    /** Inputs that matter most. */
    public Judged inputs(String... paths) {
        inputs.addAll(List.of(paths));
        return this;
    }

    /** The finding. */
    public Finding finding() {
        return new Finding(
                key,
                subject,
                state,
                variant,
                found,
                limit,
                Collections.unmodifiableMap(new LinkedHashMap<>(figures)),
                List.copyOf(inputs),
                null);
    }
}
