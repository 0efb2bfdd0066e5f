package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.model.Asked;
import org.brakewright.model.Build;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Reading;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every quantity of the model can be written into a build file and read back. */
class CatalogueTest {
    private static final List<String> FILES = List.of("twin.yaml", "tandem.yaml", "lever.yaml");

    /** One schedule of each kind, since a key may belong to one kind alone. */
    private static final List<String> SCHEDULES = List.of(
            "kind: single_stop, from_speed: 50 mph, deceleration: 0.8 g",
            "kind: snubs, from_speed: 60 mph, to_speed: 30 mph, deceleration: 0.3 g, count: 15, interval: 45 s",
            "kind: descent, length: 4 mi, grade: 8 %, speed: 30 mph",
            "kind: events, events: [{start: 5 s, from_speed: 80 mph, to_speed: 30 mph, deceleration: 0.8 g}]",
            "kind: speed_log, points: [{time: 0 s, speed: 60 mph}, {time: 2 s, speed: 30 mph}]");

    private static final String HEAT = """

            heat:
              front:
                friction_curve: [{temperature: 100 °C, friction: 0.4}]
              rear:
                friction_curve: [{temperature: 100 °C, friction: 0.4}]
              schedules: [{name: it, SCHEDULE}]
            """;

    /** A pitching body is told whole or not at all. */
    private static final String STOPS = """

            stops:
              pitch: {period: 0.5 s, damping: 0.3}
            """;

    private static final String POINTS = "arm: {pad: {forward: -80 mm, left: 0 mm, up: -220 mm}, "
            + "pin: {forward: -60 mm, left: 0 mm, up: -12 mm}, socket: {forward: 30 mm, left: 0 mm, up: -12 mm}, ";

    private static final String ON_BRACKET = "on_bracket: box, at: {forward: -60 mm, left: 0 mm, up: 40 mm}";

    /** A bar has the dimensions of its shape; the pedal is placed by points where no mechanism does. */
    private static String otherShapes() {
        return Texts.text("lever.yaml")
                .replace(
                        "kind: angle, width: 30 mm, height: 40 mm, thickness: 3 mm",
                        "kind: round_tube, diameter: 25 mm, wall: 2 mm")
                .replace("on_panel: {across: 0 mm, up: 80 mm}, foot: 30 mm", ON_BRACKET)
                .replace("arm: {", POINTS);
    }

    /** The first obstacle of each list is a cylinder; without it the sphere comes first. */
    private static final String CYLINDER = "    - .name: column, kind: cylinder.*\n";

    private static Stream<String> texts() {
        return Stream.concat(
                Stream.concat(
                        FILES.stream().map(Texts::text),
                        Stream.of(
                                Texts.text("twin.yaml") + STOPS,
                                otherShapes(),
                                Texts.text("lever.yaml").replaceAll(CYLINDER, ""))),
                SCHEDULES.stream().map(kind -> Texts.text("twin.yaml") + HEAT.replace("SCHEDULE", kind)));
    }

    static Stream<Field> fields() {
        return FieldCatalogue.all().stream();
    }

    @Test
    void theModelHasFields() {
        assertThat(FieldCatalogue.all()).hasSizeGreaterThan(50);
    }

    @ParameterizedTest
    @MethodSource("fields")
    void setsAndReadsBack(Field field) {
        String path = field.pattern().replace("[]", "[0]");
        String written = middle(field);
        List<Given> read = texts().map(text -> edited(text, path, written))
                .filter(text -> BuildFile.read(text) instanceof ReadOutcome.Usable)
                .flatMap(text -> givens(Texts.build(text)).stream())
                .filter(given -> given.path().equals(path))
                .toList();
        assertThat(read).isNotEmpty().allSatisfy(given -> assertThat(given.si()).isEqualTo(meant(field, written)));
    }

    @ParameterizedTest
    @MethodSource("fields")
    void removesWhatItSet(Field field) {
        String path = field.pattern().replace("[]", "[0]");
        for (String text : FILES.stream().map(Texts::text).toList()) {
            if (Leaves.of(root(text)).keySet().stream().noneMatch(leaf -> path.startsWith(leaf) || leaf.equals(path))
                    && Leaves.of(root(text)).keySet().stream()
                            .anyMatch(leaf -> leaf.startsWith(Paths.parent(path) + "."))) {
                assertThat(edited(edited(text, path, middle(field)), path, "")).isEqualTo(text);
            }
        }
    }

    /** A builder who types the limit that a message shows must not get the same message again. */
    @ParameterizedTest
    @MethodSource("fields")
    void theLimitsShownAreAllowed(Field field) {
        Asked asked = asked(Build.class, field).getFirst();
        List<Optional<Unit>> units = field.dimension().likelyUnits().isEmpty()
                ? List.of(Optional.empty())
                : Unit.of(field.dimension()).stream().map(Optional::of).toList();
        for (Optional<Unit> unit : units) {
            assertThat(Limits.words(asked, unit).split(" to ", -1))
                    .hasSize(2)
                    .allSatisfy(limit -> assertThat(Limits.allow(asked, meant(field, limit)))
                            .as(limit)
                            .isTrue());
        }
    }

    /** The annotations from which a field of the catalogue was made: those with its label and limits. */
    private static List<Asked> asked(Class<?> section, Field field) {
        if (section.isSealed()) {
            return Slot.kinds(section).values().stream()
                    .flatMap(kind -> asked(kind, field).stream())
                    .toList();
        }
        return Slot.of(section).stream()
                .flatMap(slot -> slot.nested() ? asked(slot.type(), field).stream() : slot.asked().stream())
                .filter(asked -> asked.label().equals(field.label())
                        && asked.least() == field.least()
                        && asked.most() == field.most())
                .toList();
    }

    private static Node root(String text) {
        return java.util.Objects.requireNonNull(TreeReader.read(text).root());
    }

    /** The middle of the range that the field allows, in its likeliest unit. */
    private static String middle(Field field) {
        double middle = (field.least() + field.most()) / 2;
        return field.dimension().likelyUnits().stream()
                .findFirst()
                .map(unit -> QuantityWriter.write(middle, unit))
                .orElseGet(() -> QuantityWriter.write(middle));
    }

    private static double meant(Field field, String written) {
        return switch (QuantityReader.read(written, field.dimension())) {
            case Reading.Read read -> read.quantity().si();
            case Reading.Refused refused -> throw new AssertionError(refused.reason());
        };
    }

    private static String edited(String text, String path, String value) {
        return switch (SpanEdit.apply(text, path, value)) {
            case EditOutcome.Edited edited -> edited.text();
            case EditOutcome.Refused refused -> throw new AssertionError(refused.problem() + "\n" + text);
        };
    }

    private static List<Given> givens(Build build) {
        List<Given> found = new ArrayList<>();
        collect(build, found);
        return found;
    }

    private static void collect(@Nullable Object value, List<Given> found) {
        if (value instanceof Given given) {
            found.add(given);
        } else if (value instanceof List<?> list) {
            list.forEach(item -> collect(item, found));
        } else if (value instanceof Record written) {
            for (RecordComponent component : written.getClass().getRecordComponents()) {
                collect(component(component, written), found);
            }
        }
    }

    private static @Nullable Object component(RecordComponent component, Record written) {
        try {
            return component.getAccessor().invoke(written);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("the records of the model are public: " + component, e);
        }
    }
}
