package org.brakewright.app.page;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakewright.analysis.ledger.LedgerEntry;
import org.brakewright.analysis.resolve.Assumption;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.model.Asked;
import org.brakewright.model.FieldCatalogue;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.jspecify.annotations.Nullable;

/**
 * Every input that the build file of this car can hold, given or not, section by section. Sections that are absent and
 * could not stand without further keys (a valve, a booster) are left out.
 */
final class Inputs {
    private final InputFields fields;
    private final Map<String, List<PageView.FieldView>> sections = new LinkedHashMap<>();

    Inputs(Show show) {
        this.fields = new InputFields(show);
    }

    List<PageView.Section> of(Assessment assessment) {
        Map<String, Assumption> assumed = assessment.ledger().stream()
                .map(LedgerEntry::assumption)
                .collect(Collectors.toMap(Assumption::path, assumption -> assumption));
        fields.assumed(assumed);
        record(assessment.build().getClass(), assessment.build(), "", "the build file");
        return sections.entrySet().stream()
                .map(section -> new PageView.Section(section.getKey(), section.getValue()))
                .toList();
    }

    private void record(Class<?> type, @Nullable Object instance, String prefix, String section) {
        for (RecordComponent component : type.getRecordComponents()) {
            String path =
                    prefix.isEmpty() ? FieldCatalogue.key(component) : prefix + "." + FieldCatalogue.key(component);
            component(component, instance == null ? null : value(component, instance), path, section);
        }
    }

    private void component(RecordComponent component, @Nullable Object value, String path, String section) {
        Class<?> type = component.getType();
        if (component.isAnnotationPresent(Asked.class)) {
            quantities(component, value, path, section);
        } else if (type == List.class) {
            list(component, value, path, section);
        } else if (type == String.class || type == Boolean.class || type.isEnum()) {
            add(section, fields.choice(component, value, path));
        } else if (type.isRecord() || type.isSealed()) {
            section(component, value, path, section);
        }
    }

    private void quantities(RecordComponent component, @Nullable Object value, String path, String section) {
        boolean required = component.isAnnotationPresent(Required.class);
        if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                add(section, fields.quantity((Given) list.get(i), path + "[" + i + "]", required, numbered(i, list)));
            }
        } else {
            add(section, fields.quantity((Given) value, path, required, ""));
        }
    }

    private static String numbered(int index, List<?> list) {
        return list.size() > 1 ? " " + (index + 1) : "";
    }

    private void list(RecordComponent component, @Nullable Object value, String path, String section) {
        Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        if ((element.isRecord() || element.isSealed()) && value instanceof List<?> list) {
            // points and events stand in several parts of a car
            String within = path.lastIndexOf('.') == path.indexOf('.') ? "" : section + ": ";
            for (int i = 0; i < list.size(); i++) {
                Object item = list.get(i);
                record(item.getClass(), item, path + "[" + i + "]", within + label(component) + " " + (i + 1));
            }
        } else if (element.isEnum()) {
            add(section, fields.choices(component, element, value, path));
        }
    }

    private void section(RecordComponent component, @Nullable Object value, String path, String section) {
        Class<?> type = value == null ? component.getType() : value.getClass();
        if (value == null && (type.isSealed() || needsMore(type))) {
            return;
        }
        String label = label(component);
        record(type, value, path, section.equals("the build file") ? label : section + ": " + label);
    }

    private static boolean needsMore(Class<?> type) {
        return Arrays.stream(type.getRecordComponents()).anyMatch(c -> c.isAnnotationPresent(Required.class));
    }

    private void add(String section, PageView.FieldView field) {
        sections.computeIfAbsent(section, key -> new ArrayList<>()).add(field);
    }

    private static String label(RecordComponent component) {
        Label label = component.getAnnotation(Label.class);
        return label == null ? FieldCatalogue.key(component) : label.value();
    }

    private static @Nullable Object value(RecordComponent component, Object instance) {
        try {
            return component.getAccessor().invoke(instance);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a record of the model can be read: " + component, e);
        }
    }
}
