package org.brakewright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import org.brakewright.app.Cars;
import org.brakewright.app.Refresh;
import org.brakewright.app.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema of tolerance runs is that of the records, and another program's validator judges with it. */
class ToleranceSchemaTest {
    private static final Path PACKED =
            Path.of("src", "main", "resources", "org", "brakewright", "app", "report", "tolerance.schema.json");
    private static final Path PUBLISHED = Path.of("..", "..", "docs", "fileformat", "tolerance.schema.json");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void packedAndPublishedCopiesAreThoseOfTheRecords() {
        String made = ResultSchemaMaker.make(ToleranceResult.class, "Brakewright: what tolerance --json prints");
        Refresh.file(PACKED, made);
        Refresh.file(PUBLISHED, made);
        assertThat(Cars.read(PACKED)).as(PACKED + " " + Refresh.HOW).isEqualTo(made);
        assertThat(Cars.read(PUBLISHED)).as(PUBLISHED + " " + Refresh.HOW).isEqualTo(made);
    }

    @Test
    void theProgramPrintsIt() {
        Shell run = Shell.run("schema", "--tolerance");
        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).isEqualTo(Cars.read(PUBLISHED).strip());
    }

    @Test
    void everyKeyIsExplained() {
        List<JsonNode> parts =
                JsonMapper.shared().readTree(Cars.read(PUBLISHED)).findValues("properties");
        assertThat(parts)
                .hasSizeGreaterThan(5)
                .allSatisfy(part -> part.properties()
                        .forEach(key -> assertThat(
                                        key.getValue().path("description").asString(""))
                                .as(key.getKey())
                                .isNotEmpty()));
    }

    /** As they stand; with wheels that nothing locks; with a stop that no push gives; with pads that can overlap. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hill-climber | Kestrel hill | Kestrel hill",
                "shop-pickup | format: 1 | format: 1",
                "hill-climber | grip: 1.0 ± 0.1 (assumed) | grip: 0.05",
                "hill-climber | pad_arm: 268 mm | pad_arm: 60 mm",
                "hill-climber | inner_radius: 81 mm | inner_radius: 105 ± 10 mm"
            })
    void runsAreValid(String car, String from, String to) {
        Path file = Cars.copy(folder, Cars.text(car, from, to));
        Shell run = Shell.run("tolerance", file.toString(), "--samples", "128", "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(faults(run.out())).isEmpty();
        assertThat(run.out()).doesNotContain("NaN", "Infinity");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"measure\" : \"effort\" | \"measure\" : \"EFFORT\"",
                "\"belief\" : \"even\" | \"belief\" : \"flat\"",
                "\"p05\" | \"p5\"",
                "\"seed\" : 1 | \"seed\" : \"one\""
            })
    void brokenRunsAreRefused(String from, String to) {
        String json = Shell.run("tolerance", Cars.file("hill-climber").toString(), "--samples", "64", "--json")
                .out();
        assertThat(json).contains(from);
        assertThat(faults(json.replace(from, to))).isNotEmpty();
    }

    private static List<Error> faults(String json) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Cars.read(PUBLISHED))
                .validate(json, InputFormat.JSON);
    }
}
