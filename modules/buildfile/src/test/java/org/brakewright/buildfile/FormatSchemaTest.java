package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.brakewright.model.Field;
import org.brakewright.model.FieldCatalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.json.JsonMapper;

/** The published schema is that of the model, and another program's validator judges with it as the reader does. */
class FormatSchemaTest {
    private static final String FILE = "build-file.schema.json";

    @Test
    void thePublishedCopyIsUpToDate() {
        Docs.refresh(FILE, FormatSchema.json());
        assertThat(Docs.text(FILE)).isEqualTo(FormatSchema.json());
    }

    @Test
    void theSchemaItselfIsValid() {
        Schema ofSchemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(ofSchemas.validate(FormatSchema.json(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void theExampleIsReadAndValid() {
        String example = Docs.text("example.yaml");
        assertThat(Texts.problems(example)).isEmpty();
        assertThat(faults(example)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"larkspur.yaml", "twin.yaml", "tandem.yaml"})
    void goodFilesAreValid(String name) {
        assertThat(Texts.problems(Texts.text(name))).isEmpty();
        assertThat(faults(Texts.text(name))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "format: 1 | format: 2",
                "name: Larkspur special | nickname: Larkspur",
                "  wheelbase: | #",
                "  wheelbase: | wheel_base:",
                "grip: 1.0 | grip: 9.0",
                "grip: 1.0 | grip: [1.0]",
                "2310 ± 5 mm (measured) | 2310",
                "kind: disc | kind: disk",
                "kind: disc | kind: drum",
                "caliper: sliding | caliper: loose",
                "[48 mm (part sheet)] | []",
                "pedal: {ratio: 5.0} | pedal: 5.0",
                "[un_r13h] | [un_r14]",
                "use: road, | ''",
                "offset: 0 mm | offset: 0 mm, locked_for_road: maybe"
            })
    void brokenFilesAreRefusedByBoth(String from, String to) {
        assertThat(Texts.larkspur()).contains(from);
        String broken = Texts.larkspur().replace(from, to);
        assertThat(Texts.problems(broken)).isNotEmpty();
        assertThat(faults(broken)).isNotEmpty();
    }

    @Test
    void everyFieldIsExplained() {
        assertThat(FieldCatalogue.all().stream().map(Field::label).map(label -> "\"title\" : \"" + label + "\""))
                .hasSizeGreaterThan(50)
                .allSatisfy(title -> assertThat(FormatSchema.json()).contains(title));
    }

    private static List<Error> faults(String yaml) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(FormatSchema.json());
        return schema.validate(json(yaml), InputFormat.JSON);
    }

    private static String json(String yaml) {
        Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return JsonMapper.shared().writeValueAsString(tree);
    }
}
