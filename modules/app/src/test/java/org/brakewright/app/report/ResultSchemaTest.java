package org.brakewright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import org.brakewright.app.Cars;
import org.brakewright.app.Refresh;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema is that of the records, and another program's validator judges the results with it. */
class ResultSchemaTest {
    private static final Path PACKED =
            Path.of("src", "main", "resources", "org", "brakewright", "app", "report", "result.schema.json");
    private static final Path PUBLISHED = Path.of("..", "..", "docs", "fileformat", "result.schema.json");
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @Test
    void packedAndPublishedCopiesAreThoseOfTheRecords() {
        String made = ResultSchemaMaker.make(Result.class, "Brakewright: what check --json prints");
        Refresh.file(PACKED, made);
        Refresh.file(PUBLISHED, made);
        assertThat(Cars.read(PACKED)).as(PACKED + " " + Refresh.HOW).isEqualTo(made);
        assertThat(Cars.read(PUBLISHED)).as(PUBLISHED + " " + Refresh.HOW).isEqualTo(made);
    }

    @Test
    void theProgramPrintsIt() {
        Shell run = Shell.run("schema", "--result");
        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).isEqualTo(Cars.read(PUBLISHED).strip());
    }

    @Test
    void theSchemaItselfIsValid() {
        Schema ofSchemas = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(ofSchemas.validate(Cars.read(PUBLISHED), InputFormat.JSON)).isEmpty();
    }

    @Test
    void everyKeyIsExplained() {
        List<JsonNode> parts =
                JsonMapper.shared().readTree(Cars.read(PUBLISHED)).findValues("properties");
        assertThat(parts)
                .hasSizeGreaterThan(10)
                .allSatisfy(part -> part.properties()
                        .forEach(key -> assertThat(
                                        key.getValue().path("description").asString(""))
                                .as(key.getKey())
                                .isNotEmpty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill-climber", "shop-pickup", "heavy-tourer"})
    void resultsAreValid(String car) {
        String json = JsonReport.write(Cars.assessed(Cars.text(car)));
        assertThat(faults(json)).isEmpty();
        assertThat(json).doesNotContain("NaN", "Infinity");
    }

    /** No grip, no booster, no push that gives the hard stop: the cases in which numbers are missing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hill-climber | grip: 1.0 ± 0.1 (assumed) | grip: 0.05",
                "hill-climber | hard_stop: 0.9 g | hard_stop: 1.4 g",
                "hill-climber | cg_height: 405 ± 30 mm (assumed) | cg_height: 1300 mm",
                "heavy-tourer | travel_to_stop: 165 mm (measured) | travel_to_stop: 60 mm",
                "shop-pickup | diaphragm_diameter: 9 in (measured) | diaphragm_diameter: 5 in",
                "shop-pickup | wheel_cylinder: 7/8 in (part sheet) | wheel_cylinder: 1/2 in"
            })
    void resultsOfOddCarsAreValid(String car, String from, String to) {
        String json = JsonReport.write(Cars.assessed(Cars.text(car, from, to)));
        assertThat(faults(json)).isEmpty();
        assertThat(json).doesNotContain("NaN", "Infinity");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"result_format\" : 1 | \"result_format\" : \"one\"",
                "\"result_format\" : 1 | \"format\" : 1",
                "\"result_format\" : 1 | \"result_format\" : 1, \"more\" : 1",
                "\"pedal_ratio\" | \"pedal_ratios\"",
                "\"state\" : \"stop\" | \"state\" : \"red\"",
                "\"axle\" : \"front\" | \"axle\" : \"left\"",
                "\"pedal_force_n\" | \"pedal_force\"",
                "\"pedal_force_n\" : | \"pedal_force_n\" : null, \"x\" :",
                "\"what\" : \"front_circuit\" | \"what\" : \"FRONT_CIRCUIT\""
            })
    void brokenResultsAreRefused(String from, String to) {
        String json = JsonReport.write(Cars.assessed(Cars.text("hill-climber")));
        assertThat(json).contains(from);
        assertThat(faults(json.replace(from, to))).isNotEmpty();
    }

    /** The keys that other programs were promised. */
    @Test
    void theResultHoldsThePromisedKeys() {
        JsonNode result = JsonMapper.shared().readTree(JsonReport.write(Cars.assessed(Cars.text("hill-climber"))));
        JsonNode loadCase = result.at("/load_cases/0");
        assertThat(loadCase.has("critical_deceleration_g")).isTrue();
        assertThat(loadCase.at("/at_deceleration/0").propertyNames())
                .contains(
                        "deceleration_g",
                        "pedal_force_n",
                        "front_pressure_pa",
                        "rear_pressure_pa",
                        "front_force_n",
                        "rear_force_n",
                        "front_adhesion",
                        "rear_adhesion",
                        "pedal_travel_m",
                        "efficiency");
        assertThat(loadCase.at("/lock/0").propertyNames())
                .containsExactlyInAnyOrder("grip", "axle", "deceleration_g", "efficiency");
    }

    private static List<Error> faults(String json) {
        return REGISTRY.getSchema(Cars.read(PUBLISHED)).validate(json, InputFormat.JSON);
    }
}
