package org.brakewright.buildfile;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Origin;
import org.brakewright.model.Problem;
import org.brakewright.quantity.Quantity;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.Reading;
import org.jspecify.annotations.Nullable;

/** Reads single values: quantities with their origin, choices, yes or no, whole numbers and texts. */
final class ScalarReading {
    /** What stands in parentheses at the end, unless it is part of a unit such as W/(m2 K). */
    private static final Pattern ORIGIN = Pattern.compile("^(.*?)(?<!/)\\s*\\(([^()]*)\\)\\s*$", Pattern.DOTALL);

    private static final Set<String> YES = Set.of("yes", "true");
    private static final Set<String> NO = Set.of("no", "false");
    private static final String ORIGINS = "measured, part sheet, assumed or computed, in parentheses behind the value";

    private final Faults faults;

    ScalarReading(Faults faults) {
        this.faults = faults;
    }

    /** The value of a text at a key, or null when it was refused. */
    @Nullable
    Object read(Slot slot, Node.Text text, String path) {
        Class<?> type = slot.type();
        if (type == Given.class) {
            return given(slot, text, path);
        }
        if (type.isEnum()) {
            return choice(slot, text, path);
        }
        if (type == Boolean.class || type == boolean.class) {
            return yesOrNo(slot, text, path);
        }
        return type == String.class ? words(slot, text, path) : wholeNumber(slot, text, path);
    }

    private @Nullable Given given(Slot slot, Node.Text text, String path) {
        Asked asked = slot.asked().orElseThrow(() -> new IllegalStateException("a quantity is @Asked: " + slot));
        Matcher parts = ORIGIN.matcher(text.value());
        boolean stated = parts.matches();
        Optional<Origin> origin = stated ? origin(parts.group(2)) : Optional.of(Origin.UNSTATED);
        if (origin.isEmpty()) {
            refuse(text, path, "`" + Faults.shown(parts.group(2)) + "` is not where a value can come from", ORIGINS);
        }
        Quantity quantity = quantity(asked, stated ? parts.group(1) : text.value(), text, path);
        return quantity == null || origin.isEmpty() ? null : new Given(quantity, origin.get(), path);
    }

    private @Nullable Quantity quantity(Asked asked, String written, Node.Text text, String path) {
        return switch (QuantityReader.read(written, asked.dimension())) {
            case Reading.Refused refused -> {
                String allowed = refused.offers().isEmpty() ? Limits.due(asked) : String.join(" or ", refused.offers());
                refuse(text, path, refused.reason(), allowed);
                yield null;
            }
            case Reading.Read read -> within(asked, read.quantity(), text, path);
        };
    }

    private @Nullable Quantity within(Asked asked, Quantity quantity, Node.Text text, String path) {
        if (Limits.allow(asked, quantity.si())) {
            return Limits.settled(asked, quantity);
        }
        String limits = Limits.words(asked, quantity.unit());
        String because = asked.why().isEmpty() ? "" : " because " + asked.why();
        refuse(text, path, asked.label() + " must be " + limits + because, limits);
        return null;
    }

    private static Optional<Origin> origin(String words) {
        String plain = KeyAdvice.plain(words);
        return Arrays.stream(Origin.values())
                .filter(origin -> origin != Origin.UNSTATED
                        && KeyAdvice.plain(origin.words()).equals(plain))
                .findFirst();
    }

    private @Nullable Object choice(Slot slot, Node.Text text, String path) {
        String plain = KeyAdvice.plain(text.value());
        for (Object constant : slot.type().getEnumConstants()) {
            if (((Enum<?>) constant).name().toLowerCase(Locale.ROOT).equals(plain)) {
                return constant;
            }
        }
        String question = KeyAdvice.nearest(plain, Slot.choices(slot.type()))
                .map(near -> "; did you mean `" + near + "`?")
                .orElse("");
        String shown = Faults.shown(text.value());
        refuse(text, path, "`" + shown + "` is not a choice for " + slot.label() + question, Due.one(slot));
        return null;
    }

    private @Nullable Boolean yesOrNo(Slot slot, Node.Text text, String path) {
        String plain = KeyAdvice.plain(text.value());
        if (YES.contains(plain) || NO.contains(plain)) {
            return YES.contains(plain);
        }
        refuse(text, path, slot.label() + " is answered by yes or no", Due.one(slot));
        return null;
    }

    private @Nullable String words(Slot slot, Node.Text text, String path) {
        String value = text.value().strip();
        if (value.isEmpty()) {
            refuse(text, path, slot.label() + " has no text", Due.one(slot));
            return null;
        }
        if (value.length() > Due.longest(slot)) {
            refuse(text, path, slot.label() + " has " + value.length() + " characters", Due.one(slot));
            return null;
        }
        return value;
    }

    private @Nullable Integer wholeNumber(Slot slot, Node.Text text, String path) {
        String value = text.value().strip();
        if (value.matches("[+-]?\\d{1,9}")) {
            return Integer.valueOf(value);
        }
        refuse(text, path, slot.label() + " is a whole number", Due.one(slot));
        return null;
    }

    private void refuse(Node.Text text, String path, String message, String allowed) {
        faults.add(text.span(), new Problem(path, Faults.shown(text.value()), message, allowed));
    }
}
