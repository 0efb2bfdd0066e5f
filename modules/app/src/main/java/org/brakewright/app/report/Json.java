package org.brakewright.app.report;

import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** JSON with snake_case keys and lower-case choices. */
public final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .addModule(new SimpleModule().addSerializer(new LowerCase()))
            .build();

    private Json() {}

    /** A value as JSON on one line. */
    public static String write(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** A value as indented JSON. */
    public static String indented(Object value) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n";
    }

    /**
     * Reads a value.
     *
     * @throws tools.jackson.core.JacksonException when the text is not such a value
     */
    public static <T> T read(String json, Class<T> type) {
        return MAPPER.readValue(json, type);
    }

    private static final class LowerCase extends ValueSerializer<Enum<?>> {
        @Override
        public Class<?> handledType() {
            return Enum.class;
        }

        @Override
        public void serialize(Enum<?> value, JsonGenerator generator, SerializationContext context) {
            generator.writeString(value.name().toLowerCase(Locale.ROOT));
        }
    }
}
