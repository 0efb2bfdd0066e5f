package org.brakewright.app.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakewright.app.Cars;
import tools.jackson.databind.JsonNode;

/** What the page's side says that it is sent, read from its source: as much of its language as it uses. */
final class Contract {
    private static final Path SOURCES = Path.of("..", "..", "ui", "src");
    private static final Pattern INTERFACE = Pattern.compile("export interface (\\w+) \\{\\n(.*?)\\n}", Pattern.DOTALL);
    private static final Pattern ALIAS = Pattern.compile("export type (\\w+) =(.*?);", Pattern.DOTALL);
    private static final Pattern KEY = Pattern.compile("(\\w+)(\\??): ((?:\\{[^}]*}|[^;])*);?");

    private final Map<String, Map<String, String>> interfaces = new LinkedHashMap<>();
    private final Map<String, String> aliases = new LinkedHashMap<>();

    Contract() {
        String source = Stream.of(
                        "contract.ts",
                        "chartContract.ts",
                        "spreadContract.ts",
                        "sheetsContract.ts",
                        "stopsContract.ts",
                        "sceneContract.ts",
                        "mechanismContract.ts")
                .map(file -> Cars.read(SOURCES.resolve(file)))
                .collect(Collectors.joining())
                .replaceAll("(?s)/\\*.*?\\*/", "");
        INTERFACE.matcher(source).results().forEach(found -> interfaces.put(found.group(1), keys(found.group(2))));
        ALIAS.matcher(source).results().forEach(found -> aliases.put(found.group(1), found.group(2)));
    }

    private static Map<String, String> keys(String body) {
        Map<String, String> keys = new LinkedHashMap<>();
        Matcher key = KEY.matcher(body);
        while (key.find()) {
            keys.put(key.group(1) + key.group(2), key.group(3).strip());
        }
        return keys;
    }

    Set<String> names() {
        return interfaces.keySet();
    }

    Set<String> keysOf(String name) {
        return interfaces.getOrDefault(name, Map.of()).keySet();
    }

    /** Where a value differs from its type. */
    List<String> differences(String type, JsonNode value) {
        List<String> found = new ArrayList<>();
        compare(type, value, type, found);
        return found;
    }

    private void compare(String type, JsonNode value, String at, List<String> found) {
        if (type.endsWith("[]")) {
            array(type.substring(0, type.length() - 2), value, at, found);
        } else if (type.startsWith("{")) {
            object(keys(type.substring(1, type.lastIndexOf('}'))), value, at, found);
        } else if (type.startsWith("Partial<") || type.startsWith("Record<")) {
            map(type, value, at, found);
        } else if (interfaces.containsKey(type)) {
            object(interfaces.getOrDefault(type, Map.of()), value, at, found);
        } else if (aliases.containsKey(type)) {
            compare(aliases.getOrDefault(type, ""), value, at, found);
        } else if (!plain(type, value)) {
            found.add(at + " is " + value + ", not " + type.strip());
        }
    }

    private void object(Map<String, String> keys, JsonNode value, String at, List<String> found) {
        Set<String> unknown = new TreeSet<>(value.propertyNames());
        keys.forEach((key, type) -> {
            String name = key.replace("?", "");
            unknown.remove(name);
            if (value.has(name)) {
                compare(type, value.get(name), at + "." + name, found);
            } else if (!key.endsWith("?")) {
                found.add(at + "." + name + " is missing");
            }
        });
        unknown.forEach(name -> found.add(at + "." + name + " is not in the contract"));
    }

    private void array(String type, JsonNode value, String at, List<String> found) {
        if (!value.isArray()) {
            found.add(at + " is no list");
        }
        String element = type.startsWith("(") ? type.substring(1, type.length() - 1) : type;
        value.forEach(entry -> compare(element, entry, at + "[]", found));
    }

    private void map(String type, JsonNode value, String at, List<String> found) {
        Matcher parts = Pattern.compile("Record<(\\w+), (.*?)>>?$").matcher(type);
        if (!parts.find()) {
            throw new IllegalArgumentException("not understood: " + type);
        }
        Set<String> allowed = words(aliases.getOrDefault(parts.group(1), ""));
        Set<String> there = new TreeSet<>(value.propertyNames());
        if (!allowed.containsAll(there) || (type.startsWith("Record<") && !there.containsAll(allowed))) {
            found.add(at + " has " + there + ", not " + allowed);
        }
        value.forEach(entry -> compare(parts.group(2), entry, at + "{}", found));
    }

    private boolean plain(String type, JsonNode value) {
        return Arrays.stream(type.split("\\|", -1)).map(String::strip).anyMatch(one -> switch (one) {
            case "string" -> value.isString();
            case "number" -> value.isNumber();
            case "boolean" -> value.isBoolean();
            case "null" -> value.isNull();
            default ->
                one.startsWith("'")
                        ? value.isString() && one.equals("'" + value.asString() + "'")
                        : isType(one) && differences(one, value).isEmpty();
        });
    }

    private boolean isType(String name) {
        return interfaces.containsKey(name) || aliases.containsKey(name);
    }

    private static Set<String> words(String union) {
        Set<String> words = new TreeSet<>();
        Pattern.compile("'(\\w+)'").matcher(union).results().forEach(word -> words.add(word.group(1)));
        return words;
    }
}
