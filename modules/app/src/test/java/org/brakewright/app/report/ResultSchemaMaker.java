package org.brakewright.app.report;

import com.fasterxml.classmate.ResolvedType;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.brakewright.findings.State;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Makes the schema of the results from their records: names, kinds, what may be null, and the words of their comments. */
final class ResultSchemaMaker {
    private static final Set<String> STATES = Set.of("state", "becomes");

    private ResultSchemaMaker() {}

    static String make(Class<?> result, String title) {
        SchemaGeneratorConfigBuilder config = new SchemaGeneratorConfigBuilder(
                        SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
                .with(
                        Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT,
                        Option.MAP_VALUES_AS_ADDITIONAL_PROPERTIES,
                        Option.DEFINITIONS_FOR_ALL_OBJECTS,
                        Option.PLAIN_DEFINITION_KEYS);
        config.forFields()
                .withPropertyNameOverrideResolver(field -> snake(field.getDeclaredName()))
                .withRequiredCheck(field -> true)
                .withNullableCheck(ResultSchemaMaker::mayBeNull)
                .withDescriptionResolver(ResultSchemaMaker::description)
                .withEnumResolver(field -> STATES.contains(field.getDeclaredName()) ? names(State.class) : null);
        config.forTypesInGeneral().withCustomDefinitionProvider(ResultSchemaMaker::lowerCase);
        ObjectNode schema = new SchemaGenerator(config.build()).generateSchema(result);
        schema.put("title", title);
        return Json.indented(schema);
    }

    private static String snake(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", "_")
                .toLowerCase(Locale.ROOT);
    }

    private static boolean mayBeNull(FieldScope field) {
        return !field.isFakeContainerItemScope()
                && field.getRawMember().getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    private static @Nullable String description(FieldScope field) {
        return field.isFakeContainerItemScope()
                ? null
                : ParamDocs.of(field.getDeclaringType().getErasedType(), field.getDeclaredName())
                        .orElse(null);
    }

    private static @Nullable CustomDefinition lowerCase(ResolvedType type, SchemaGenerationContext context) {
        Class<?> erased = type.getErasedType();
        if (!erased.isEnum()) {
            return null;
        }
        ObjectNode choices = context.getGeneratorConfig().createObjectNode().put("type", "string");
        names(erased).forEach(choices.putArray("enum")::add);
        return new CustomDefinition(
                choices, CustomDefinition.DefinitionType.INLINE, CustomDefinition.AttributeInclusion.YES);
    }

    private static List<String> names(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> ((Enum<?>) constant).name().toLowerCase(Locale.ROOT))
                .toList();
    }
}
