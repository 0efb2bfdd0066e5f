package org.brakewright.buildfile;

import java.util.Locale;
import java.util.stream.Collectors;
import org.brakewright.model.Asked;
import org.brakewright.model.Build;
import org.brakewright.model.Given;
import org.brakewright.model.Kind;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The build file as JSON Schema (draft 2020-12), written from the records of the model, so that an editor can complete
 * and explain the keys. It knows the form of a quantity but not its spelling: that a length is between its limits is
 * judged by {@link BuildFile}.
 */
public final class FormatSchema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
    private static final String REFERENCE = "#/$defs/";

    private final ObjectNode definitions = object();

    private FormatSchema() {}

    /** The schema as text, indented by two blanks, lines ended by a line feed. */
    public static String json() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        return JsonMapper.shared().writer().with(printer).writeValueAsString(new FormatSchema().root()) + "\n";
    }

    private ObjectNode root() {
        ObjectNode root = object();
        root.put("$schema", DRAFT);
        root.put("title", "Brakewright build file, format 1");
        root.setAll(section(Build.class));
        root.set("$defs", definitions);
        return root;
    }

    private ObjectNode section(Class<?> type) {
        ObjectNode section = object();
        section.put("type", "object");
        ObjectNode properties = section.putObject("properties");
        ArrayNode required = JsonNodeFactory.instance.arrayNode();
        Kind kind = type.getAnnotation(Kind.class);
        if (kind != null) {
            properties.putObject("kind").put("const", kind.value());
            required.add("kind");
        }
        for (Slot slot : Slot.of(type)) {
            properties.set(slot.key(), property(slot));
            slot.required().ifPresent(_ -> required.add(slot.key()));
        }
        section.set("required", required);
        section.put("additionalProperties", false);
        return section;
    }

    private ObjectNode property(Slot slot) {
        ObjectNode property = object();
        property.put("title", slot.label());
        String description = description(slot);
        if (!description.isEmpty()) {
            property.put("description", description);
        }
        ObjectNode form = slot.list() ? list(slot) : one(slot);
        if (slot.required().isPresent()) {
            property.setAll(form);
        } else {
            // an empty key counts as not given
            property.putArray("anyOf").add(form).addObject().put("type", "null");
        }
        return property;
    }

    private ObjectNode list(Slot slot) {
        ObjectNode array = object();
        array.put("type", "array");
        array.set("items", one(slot));
        if (slot.neverEmpty()) {
            array.put("minItems", 1);
        }
        if (slot.type() != Given.class) {
            return array;
        }
        ObjectNode either = object();
        either.putArray("anyOf").add(array).add(one(slot));
        return either;
    }

    private ObjectNode one(Slot slot) {
        Class<?> type = slot.type();
        if (type == Given.class) {
            return quantity(slot.asked().orElseThrow());
        }
        if (slot.nested()) {
            return object().put("$ref", REFERENCE + define(type));
        }
        ObjectNode form = object();
        if (type.isEnum()) {
            Slot.choices(type).forEach(form.putArray("enum")::add);
        } else if (type == Boolean.class || type == boolean.class) {
            form.putArray("enum").add(true).add(false).add("yes").add("no");
        } else if (type == String.class) {
            form.put("type", "string").put("minLength", 1).put("maxLength", Due.longest(slot));
        } else {
            form.put("const", 1);
        }
        return form;
    }

    /** Without a unit only a plain number has a meaning, and only then the limits can be said in a schema. */
    private static ObjectNode quantity(Asked asked) {
        ObjectNode form = object();
        if (asked.dimension() != Dimension.RATIO) {
            return form.put("type", "string").put("minLength", 1);
        }
        form.putArray("type").add("string").add("number");
        form.put("minimum", asked.least());
        form.put("maximum", asked.most());
        return form;
    }

    private String define(Class<?> type) {
        String name = name(type);
        if (!definitions.has(name)) {
            ObjectNode definition = object();
            definitions.set(name, definition);
            if (type.isSealed()) {
                ArrayNode kinds = definition.putArray("oneOf");
                Slot.kinds(type).values().forEach(kind -> kinds.addObject().put("$ref", REFERENCE + define(kind)));
            } else {
                definition.setAll(section(type));
            }
        }
        return name;
    }

    private static String name(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }

    private static String description(Slot slot) {
        String how = slot.how();
        String due = slot.nested() ? "" : sentence(Due.at(slot));
        String units = slot.asked().map(FormatSchema::units).orElse("");
        return (due + units + (how.isEmpty() ? "" : " " + sentence(how))).strip();
    }

    private static String units(Asked asked) {
        String units =
                asked.dimension().likelyUnits().stream().map(Unit::symbol).collect(Collectors.joining(", "));
        return units.isEmpty() ? "" : " Units: " + units + ".";
    }

    private static String sentence(String words) {
        String first = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return first.endsWith(".") ? first : first + ".";
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
