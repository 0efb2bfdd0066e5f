package org.brakewright.app.page;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.app.words.Show;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Single inputs as the page shows them. */
final class InputFields {
    private final Show show;
    private Map<String, Assumption> assumed = Map.of();

    InputFields(Show show) {
        this.show = show;
    }

    void assumed(Map<String, Assumption> byPath) {
        this.assumed = byPath;
    }

    PageView.FieldView quantity(@Nullable Given given, String path, boolean required, String number) {
        Field field = FieldCatalogue.at(path);
        return new PageView.FieldView(
                path,
                field.label() + number,
                "quantity",
                given == null ? "" : given.quantity().written(),
                given == null ? "" : given.origin().words(),
                given == null ? assumption(path) : "",
                given == null ? "" : also(given, field.dimension()),
                field.how(),
                allowed(field),
                required,
                List.of(),
                field.dimension().likelyUnits().stream().map(Unit::symbol).toList());
    }

    PageView.FieldView choice(RecordComponent component, @Nullable Object value, String path) {
        Class<?> type = component.getType();
        String kind = type == String.class ? "text" : type == Boolean.class ? "yes_no" : "choice";
        List<String> choices = type.isEnum() ? names(type) : type == Boolean.class ? List.of("yes", "no") : List.of();
        return field(component, path, kind, written(value), choices);
    }

    /** Several choices at once, written as a flow list. */
    PageView.FieldView choices(RecordComponent component, Class<?> element, @Nullable Object value, String path) {
        String written = value instanceof List<?> list
                ? list.stream().map(InputFields::written).collect(Collectors.joining(", ", "[", "]"))
                : "";
        return field(component, path, "choices", written, names(element));
    }

    private static PageView.FieldView field(
            RecordComponent component, String path, String kind, String written, List<String> choices) {
        Label label = Optional.ofNullable(component.getAnnotation(Label.class)).orElseThrow();
        return new PageView.FieldView(
                path,
                label.value(),
                kind,
                written,
                "",
                "",
                "",
                label.how(),
                String.join(", ", choices),
                component.isAnnotationPresent(Required.class),
                choices,
                List.of());
    }

    private static String written(@Nullable Object value) {
        return switch (value) {
            case null -> "";
            case Boolean yes -> yes ? "yes" : "no";
            case Enum<?> choice -> choice.name().toLowerCase(Locale.ROOT);
            default -> value.toString();
        };
    }

    private static List<String> names(Class<?> type) {
        return Arrays.stream(type.getEnumConstants()).map(InputFields::written).toList();
    }

    private String assumption(String path) {
        Assumption assumption = assumed.get(path);
        if (assumption == null) {
            return "";
        }
        return show.value(assumption.value(), assumption.dimension()) + " ("
                + show.value(assumption.low(), assumption.dimension()) + " to "
                + show.value(assumption.high(), assumption.dimension()) + ")";
    }

    /** The same value in the unit that was not typed; a share typed in per cent stays. */
    private String also(Given given, Dimension dimension) {
        if (dimension == Dimension.RATIO) {
            return "";
        }
        Unit here = show.system().unit(dimension);
        Unit typed = given.quantity().unit().orElse(here);
        Unit shown = typed == here ? show.system().other().unit(dimension) : here;
        return shown == typed ? "" : QuantityWriter.write(given.si(), shown);
    }

    private String allowed(Field field) {
        boolean below = Double.isInfinite(field.least());
        boolean above = Double.isInfinite(field.most());
        if (below && above) {
            return "";
        }
        return show.value(field.least(), field.dimension()) + " to " + show.value(field.most(), field.dimension());
    }
}
