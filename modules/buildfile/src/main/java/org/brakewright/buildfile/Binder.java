package org.brakewright.buildfile;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakewright.model.Given;
import org.brakewright.model.Problem;
import org.jspecify.annotations.Nullable;

/** Fills the records of the model from an outline, by reflection: a new component of a record is a new key. */
final class Binder {
    private static final String KIND = "kind";

    private final Faults faults;
    private final Places places;
    private final ScalarReading scalars;

    Binder(Faults faults, Places places) {
        this.faults = faults;
        this.places = places;
        this.scalars = new ScalarReading(faults);
    }

    /** The record of a section, or null when anything in the file so far was refused. */
    @Nullable
    Object section(Class<?> type, Node node, String path) {
        return switch (node) {
            case Node.Section section when type.isSealed() -> kind(type, section, path);
            case Node.Section section -> record(type, section, path, false);
            case Node.Text text -> refuseForm(path, Faults.shown(text.value()), "a text", sectionDue(type));
            case Node.Items _ -> refuseForm(path, "", "a list", sectionDue(type));
            case Node.Unread _ -> null;
        };
    }

    private static String sectionDue(Class<?> type) {
        return type.isSealed() ? "a section with kind: " + kinds(type) : Due.section(type);
    }

    private static String kinds(Class<?> type) {
        return String.join(" or ", Slot.kinds(type).keySet());
    }

    private @Nullable Object kind(Class<?> type, Node.Section section, String path) {
        Map<String, Class<?>> kinds = Slot.kinds(type);
        Node word = section.find(KIND);
        Class<?> known = word instanceof Node.Text text ? kinds.get(KeyAdvice.plain(text.value())) : null;
        if (known != null) {
            return record(known, section, path, true);
        }
        refuseKind(word, kinds.keySet(), path);
        likeliest(section, kinds.values()).forEach(guess -> record(guess, section, path, true));
        return null;
    }

    private void refuseKind(@Nullable Node word, Set<String> kinds, String path) {
        String at = Paths.child(path, KIND);
        String allowed = "kind: " + String.join(" or kind: ", kinds);
        if (word instanceof Node.Text text && !text.absent()) {
            String question = KeyAdvice.nearest(text.value(), kinds)
                    .map(near -> "; did you mean `" + near + "`?")
                    .orElse("");
            String shown = Faults.shown(text.value());
            faults.add(
                    text.span(),
                    new Problem(at, shown, "`" + shown + "` is no kind of `" + path + "`" + question, allowed));
        } else {
            refuse(at, "", "`kind` is missing in `" + path + "`: say which of " + String.join(", ", kinds), allowed);
        }
    }

    /** The kind that knows most of the keys written, so that its other faults are told at once; none when no key fits. */
    private static List<Class<?>> likeliest(Node.Section section, Collection<Class<?>> kinds) {
        return kinds.stream()
                .filter(kind -> known(section, kind) > 0)
                .max(Comparator.comparingLong(kind -> known(section, kind)))
                .stream()
                .<Class<?>>map(kind -> kind)
                .toList();
    }

    private static long known(Node.Section section, Class<?> kind) {
        return Slot.of(kind).stream()
                .filter(slot -> section.find(slot.key()) != null)
                .count();
    }

    private @Nullable Object record(Class<?> type, Node.Section section, String path, boolean kind) {
        List<Slot> slots = Slot.of(type);
        Map<String, Node> written = entries(section, path, kind ? withKind(slots) : keys(slots));
        @Nullable
        Object[] values = slots.stream()
                .map(slot -> component(slot, written.get(slot.key()), path))
                .toArray();
        return faults.none() ? construct(type, values, path) : null;
    }

    private static List<String> keys(List<Slot> slots) {
        return slots.stream().map(Slot::key).toList();
    }

    private static List<String> withKind(List<Slot> slots) {
        List<String> keys = new ArrayList<>(List.of(KIND));
        keys.addAll(keys(slots));
        return keys;
    }

    private Map<String, Node> entries(Node.Section section, String path, List<String> known) {
        Map<String, Node> written = new HashMap<>();
        Map<String, Node> meant = new HashMap<>();
        for (Node.Entry entry : section.entries()) {
            String key = entry.key().value();
            if (!known.contains(key)) {
                refuseKey(entry.key(), path, known);
                KeyAdvice.nearest(key, known).ifPresent(near -> meant.putIfAbsent(near, entry.value()));
            } else if (written.putIfAbsent(key, entry.value()) != null) {
                refuseTwice(entry.key(), Paths.child(path, key));
            }
        }
        // a misspelled key is one fault, not also a missing one, and its value is looked at
        meant.forEach(written::putIfAbsent);
        return written;
    }

    private void refuseTwice(Node.Text key, String path) {
        String message = "`" + key.value() + "` is written twice; the first is in line "
                + places.at(path).line();
        faults.add(key.span(), new Problem(path, key.value(), message, "each key once"));
    }

    private void refuseKey(Node.Text key, String path, List<String> known) {
        String shown = Faults.shown(key.value());
        String message = key.value().equals("<<")
                ? "`<<` takes keys from another place of the file, which is not done here"
                : "unknown key `" + shown + "`" + KeyAdvice.about(key.value(), known);
        String allowed = String.join(", ", known);
        faults.add(key.span(), new Problem(Paths.child(path, shown), shown, message, allowed));
    }

    private @Nullable Object component(Slot slot, @Nullable Node node, String parent) {
        String path = Paths.child(parent, slot.key());
        if (node == null || (node instanceof Node.Text text && text.absent())) {
            slot.required().ifPresent(how -> refuse(path, "", missing(slot, parent) + ": " + how, Due.at(slot)));
            return null;
        }
        return slot.list() ? list(slot, node, path) : one(slot, node, path);
    }

    private static String missing(Slot slot, String parent) {
        return "`" + slot.key() + "` is missing" + (parent.isEmpty() ? "" : " in `" + parent + "`");
    }

    private @Nullable Object one(Slot slot, Node node, String path) {
        if (slot.nested()) {
            return section(slot.type(), node, path);
        }
        return switch (node) {
            case Node.Text text -> scalars.read(slot, text, path);
            case Node.Items _ -> refuseForm(path, "", "a list", Due.one(slot));
            case Node.Section _ -> refuseForm(path, "", "a section", Due.one(slot));
            case Node.Unread _ -> null;
        };
    }

    private @Nullable Object list(Slot slot, Node node, String path) {
        return switch (node) {
            case Node.Items items
            when items.items().isEmpty() && slot.neverEmpty() ->
                refuse(
                        path,
                        "[]",
                        "`" + slot.key() + "` has no entry: " + slot.required().orElse(""),
                        Due.at(slot));
            case Node.Items items -> items(slot, items, path);
            case Node.Text text
            when slot.type() == Given.class -> {
                Object single = scalars.read(slot, text, Paths.item(path, 0));
                yield single == null ? null : List.of(single);
            }
            case Node.Text text -> refuseForm(path, Faults.shown(text.value()), "a text", Due.at(slot));
            case Node.Section _ -> refuseForm(path, "", "a section", Due.at(slot));
            case Node.Unread _ -> null;
        };
    }

    private List<Object> items(Slot slot, Node.Items items, String path) {
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < items.items().size(); i++) {
            Node item = items.items().get(i);
            String at = Paths.item(path, i);
            if (item instanceof Node.Text text && text.absent()) {
                refuse(at, "", "this entry of `" + path + "` is empty", Due.one(slot));
                continue;
            }
            Object value = one(slot, item, at);
            if (value != null) {
                values.add(value);
            }
        }
        refuseSameNames(items, path);
        return List.copyOf(values);
    }

    /** Entries that have a name are told apart by it. */
    private void refuseSameNames(Node.Items items, String path) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < items.items().size(); i++) {
            if (items.items().get(i) instanceof Node.Section section
                    && section.find("name") instanceof Node.Text name
                    && !name.absent()
                    && !names.add(name.value().strip())) {
                String at = Paths.child(Paths.item(path, i), "name");
                String shown = Faults.shown(name.value());
                faults.add(
                        name.span(),
                        new Problem(at, shown, "`" + shown + "` is the name of an entry above", "another name"));
            }
        }
    }

    private @Nullable Object construct(Class<?> type, @Nullable Object[] values, String path) {
        try {
            Constructor<?> constructor = constructor(type);
            // what another file holds comes last and is filled in later
            return constructor.newInstance(Arrays.copyOf(values, constructor.getParameterCount()));
        } catch (InvocationTargetException e) {
            String reason = e.getCause() instanceof IllegalArgumentException refused ? refused.getMessage() : null;
            String message = reason == null ? "these values do not go together" : reason;
            return refuse(path, "", message, Due.section(type));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the records of the model are open to the reader: " + type, e);
        }
    }

    private static Constructor<?> constructor(Class<?> type) throws NoSuchMethodException {
        Class<?>[] parameters = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        return type.getConstructor(parameters);
    }

    private @Nullable Object refuseForm(String path, String value, String what, String due) {
        String here = path.isEmpty() ? "the file" : "`" + path + "`";
        return refuse(path, value, here + " takes " + due + ", not " + what, due);
    }

    private @Nullable Object refuse(String path, String value, String message, String allowed) {
        faults.add(places.at(path), new Problem(path, value, message, allowed));
        return null;
    }
}
