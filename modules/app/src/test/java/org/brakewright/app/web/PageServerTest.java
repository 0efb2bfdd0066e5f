package org.brakewright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.brakewright.app.Cars;
import org.brakewright.app.workspace.Workspace;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the server answers, asked over the wire. */
@SuppressWarnings("NullAway.Init") // JUnit sets them up
class PageServerTest {
    private static final String BEFORE = Cars.text("hill-climber");

    @TempDir
    private static Path folder;

    private static Path file;
    private static Served served;

    @BeforeAll
    static void start() throws IOException {
        file = Cars.copy(folder, BEFORE);
        served = new Served(file);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @BeforeEach
    void startOver() throws IOException {
        Files.writeString(file, BEFORE);
    }

    @Test
    void theSpreadComesApartAndBelongsToTheNewestState() {
        int revision = served.revision();
        JsonNode before = json(served.get("/api/spread?units=us"));
        assertThat(before.get("revision").asInt()).isEqualTo(revision);
        assertThat(before.get("sentence").asString()).contains(" lbf");
        served.edit("pedal.linkage.pad_arm", "300 mm");
        JsonNode after = json(served.get("/api/spread"));
        assertThat(after.get("revision").asInt()).isEqualTo(revision + 1);
        assertThat(after.at("/bands/0/marks/p50").asDouble())
                .isLessThan(before.at("/bands/0/marks/p50").asDouble());
    }

    /** The stops follow the page, with the verdict and the findings that know of them. */
    @Test
    void theStopsComeApartAndBelongToTheNewestState() {
        int revision = served.revision();
        JsonNode page = json(served.get("/api/page"));
        assertThat(page.get("findings").findValuesAsString("key")).doesNotContain("stop_over_time");
        JsonNode stops = json(served.get("/api/stops?units=us"));
        assertThat(stops.get("revision").asInt()).isEqualTo(revision);
        assertThat(stops.at("/stops_over_time/table/rows")).hasSize(10);
        assertThat(stops.get("findings").findValuesAsString("key")).contains("stop_over_time");
        assertThat(stops.get("findings")).hasSize(page.get("findings").size() + 1);
        assertThat(stops.at("/verdict/sentence").asString()).isNotBlank();
        served.edit("stops.speed", "60 km/h");
        JsonNode after = json(served.get("/api/stops"));
        assertThat(after.get("revision").asInt()).isEqualTo(revision + 1);
        assertThat(after.at("/stops_over_time/table/caption").asString()).contains("60 km/h");
    }

    /** The demo's rear wheels lock first: what is set by the bar's numbers must say so on the page and on paper. */
    @Test
    void theSheetsComeApartEachWithItsFiles() {
        int revision = served.revision();
        JsonNode list = json(served.get("/api/sheets"));
        assertThat(list.get("revision").asInt()).isEqualTo(revision);
        assertThat(list.at("/advice").asString()).contains("100 %", "check bars");
        assertThat(list.get("sheets")).hasSizeGreaterThan(3);
        for (JsonNode sheet : list.get("sheets")) {
            String key = sheet.get("key").asString();
            assertThat(served.get("/sheets/" + key + ".svg").body())
                    .startsWith("<?xml")
                    .contains("<svg");
            assertThat(served.get("/sheets/" + key + ".dxf").body()).contains("SECTION", "EOF");
            HttpResponse<String> pdf = served.get("/sheets/" + key + "-letter.pdf");
            assertThat(pdf.body()).startsWith("%PDF");
            assertThat(pdf.headers().firstValue("Content-Disposition"))
                    .hasValueSatisfying(value -> assertThat(value).startsWith("attachment"));
        }
        JsonNode bar = list.get("sheets")
                .valueStream()
                .filter(sheet -> sheet.get("key").asString().equals("balance-bar"))
                .findFirst()
                .orElseThrow();
        assertThat(bar.get("stamp").asString()).startsWith("DO NOT DRIVE SO");
        assertThat(served.get("/sheets/balance-bar.svg?owner=Ada%20of%20the%20shed")
                        .body())
                .contains("DO NOT DRIVE SO", "Ada of the shed");
    }

    @Test
    void allSheetsOfOnePaperComeInOneArchive() throws IOException {
        HttpResponse<byte[]> zip = served.bytes("/sheets/all-a4.zip");
        assertThat(zip.headers().firstValue("Content-Type")).contains("application/zip");
        List<String> names = new ArrayList<>();
        try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        int sheets = json(served.get("/api/sheets")).get("sheets").size();
        assertThat(names).hasSize(3 * sheets).contains("balance-bar-a4.pdf", "balance-bar.svg", "balance-bar.dxf");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"none.svg", "balance-bar-a5.pdf", "balance-bar.exe", "all-a5.zip", "..%2Fcar.yaml", "balance-bar"
            })
    void aSheetThatIsNotThereIsToldInASentence(String file) {
        HttpResponse<String> answer = served.get("/sheets/" + file);
        assertThat(answer.statusCode()).isIn(400, 404);
        assertThat(answer.body()).doesNotContain("Exception", "\tat ", "org.brakewright");
    }

    @Test
    void thePageIsServedInBothUnits() {
        assertThat(json(served.get("/api/page?units=us")).get("units").asString())
                .isEqualTo("us");
        assertThat(served.page().get("units").asString()).isEqualTo("metric");
        assertThat(json(served.get("/api/page")).get("units").asString()).isEqualTo("metric");
        assertThat(served.get("/api/page").headers().firstValue("Content-Type")).contains("application/json");
    }

    @Test
    void anEditIsTakenAndAnsweredWithTheNewPage() {
        int revision = served.revision();
        HttpResponse<String> answer = served.edit("pedal.free_play", "5 mm (measured)");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(json(answer).get("revision").asInt()).isEqualTo(revision + 1);
        assertThat(json(answer).get("can_undo").asBoolean()).isTrue();
        assertThat(file).hasContent(Cars.replaced(BEFORE, "free_play: 3 mm", "free_play: 5 mm"));
    }

    @Test
    void undoAndRedoAreAnsweredWithThePage() {
        served.edit("pedal.free_play", "5 mm (measured)");
        String step = "{\"revision\":%d,\"units\":\"us\"}";
        HttpResponse<String> undone = served.post("/api/undo", step.formatted(served.revision()));
        assertThat(json(undone).get("can_redo").asBoolean()).isTrue();
        assertThat(json(undone).get("units").asString()).isEqualTo("us");
        assertThat(file).hasContent(BEFORE);
        assertThat(served.post("/api/redo", step.formatted(served.revision())).statusCode())
                .isEqualTo(200);
        assertThat(Cars.read(file)).contains("free_play: 5 mm");
    }

    @Test
    void aBadValueIsRefusedWithItsReasonAndNothingIsWritten() {
        HttpResponse<String> answer = served.edit("pedal.free_play", "5 kg");
        assertThat(answer.statusCode()).isEqualTo(422);
        JsonNode problem = json(answer).at("/problems/0");
        assertThat(problem.get("path").asString()).isEqualTo("pedal.free_play");
        assertThat(problem.get("value").asString()).isEqualTo("5 kg");
        assertThat(problem.get("message").asString()).contains("length");
        assertThat(problem.get("allowed").asString()).contains("mm");
        assertThat(file).hasContent(BEFORE);
    }

    @Test
    void aListOfChoicesIsTakenAsAWhole() {
        assertThat(served.edit("intent.rule_sets", "[un_r13h, fmvss_135]").statusCode())
                .isEqualTo(200);
        assertThat(file).hasContent(Cars.replaced(BEFORE, "[un_r13h]", "[un_r13h, fmvss_135]"));
    }

    @Test
    void anOldRevisionIsAConflictAndNothingIsWritten() {
        int old = served.revision();
        served.edit("pedal.free_play", "5 mm");
        String now = Cars.read(file);
        for (String way : List.of("/api/edit", "/api/undo", "/api/redo")) {
            HttpResponse<String> answer = served.post(way, Served.edit(old, "pedal.free_play", "6 mm"));
            assertThat(answer.statusCode()).isEqualTo(409);
            assertThat(json(answer).at("/problems/0/message").asString()).contains("changed elsewhere");
        }
        assertThat(file).hasContent(now);
    }

    /** Two tabs of the browser, each with a change on top of the same page. */
    @Test
    void ofManyEditsOfOneRevisionOneIsTaken() {
        int revision = served.revision();
        List<Integer> answers = IntStream.range(1, 9)
                .parallel()
                .mapToObj(i -> served.post("/api/edit", Served.edit(revision, "pedal.free_play", i + " mm")))
                .map(HttpResponse::statusCode)
                .toList();
        assertThat(answers).filteredOn(code -> code == 200).hasSize(1);
        assertThat(answers).filteredOn(code -> code == 409).hasSize(7);
    }

    @Test
    void aChangeByAnotherEditorIsServedAndCannotBeOverwritten() throws IOException {
        int seen = served.revision();
        Files.writeString(file, Cars.replaced(BEFORE, "free_play: 3 mm", "free_play: 9 mm"));
        HttpResponse<String> answer = served.post("/api/edit", Served.edit(seen, "pedal.free_play", "1 mm"));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(served.revision()).isEqualTo(seen + 1);
        assertThat(Cars.read(file)).contains("free_play: 9 mm");
    }

    @Test
    void aFileThatBecameUnusableIsToldWithItsPlaces() throws IOException {
        int seen = served.revision();
        String broken = Cars.replaced(BEFORE, "free_play: 3 mm", "free_play: [3 mm");
        Files.writeString(file, broken);
        assertThat(served.get("/api/page").statusCode()).isEqualTo(422);
        assertThat(json(served.get("/api/page")).at("/problems/0/line").asInt()).isPositive();
        assertThat(served.post("/api/edit", Served.edit(seen, "pedal.free_play", "1 mm"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(file).hasContent(broken);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "null",
                "{",
                "{\"revision\":1}",
                "{\"revision\":\"x\",\"edits\":[]}",
                "{\"revision\":1,\"edits\":[null]}",
                "{\"revision\":1,\"edits\":[{\"path\":\"a\"}]}",
                "{\"revision\":1,\"edits\":{}}"
            })
    void whatIsNoRequestIsRefused(String body) {
        String current = body.replace("\"revision\":1", "\"revision\":" + served.revision());
        HttpResponse<String> answer = served.post("/api/edit", current);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).doesNotContain("Exception", "tools.jackson", "org.brakewright", "\tat ");
        assertThat(file).hasContent(BEFORE);
    }

    @Test
    void aHugeRequestIsRefused() {
        String huge = Served.edit(served.revision(), "name", "x".repeat(1 << 20));
        assertThat(served.post("/api/edit", huge).statusCode()).isEqualTo(413);
        assertThat(file).hasContent(BEFORE);
    }

    @Test
    void aTakenPortIsTold() throws IOException {
        Workspace.Opening.Opened opened = (Workspace.Opening.Opened) Workspace.open(file);
        assertThatThrownBy(() -> PageServer.start(opened.workspace(), false, served.port()))
                .isInstanceOf(PageServer.PortTaken.class);
    }

    private static JsonNode json(HttpResponse<String> answer) {
        return JsonMapper.shared().readTree(answer.body());
    }
}
