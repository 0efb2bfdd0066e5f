package org.brakewright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.brakewright.app.Cars;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Only this machine's own page gets in, and it can reach nothing else. */
@SuppressWarnings("NullAway.Init") // JUnit sets them up
class GuardTest {
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; "
                    + "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    @TempDir
    private static Path folder;

    private static Path file;
    private static Served served;

    @BeforeAll
    static void start() throws IOException {
        file = Cars.copy(folder, Cars.text("hill-climber"));
        served = new Served(file);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    /** All of 127/8 is this machine on Linux: a server bound to every address would answer there too. */
    @Test
    void onlyTheLoopbackAddressIsBound() {
        assertThat(served.address("/").getHost()).isEqualTo("127.0.0.1");
        assertThatThrownBy(() -> new Socket(InetAddress.getByName("127.0.0.2"), served.port()).close())
                .isInstanceOf(ConnectException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/api/page", "/mark.svg"})
    void everythingIsServedUnderThePolicy(String path) {
        HttpResponse<String> answer = served.get(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().allValues("Content-Security-Policy")).containsExactly(POLICY);
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(answer.headers().firstValue("Referrer-Policy")).contains("no-referrer");
        nothingIsShared(answer);
    }

    @Test
    void thePageHasNoInlineScriptOrStyleAndLoadsNothingFromElsewhere() {
        String html = served.get("/").body();
        assertThat(html).contains("<script").doesNotContainPattern("<script(?![^>]*\\ssrc=)");
        assertThat(html)
                .doesNotContain("<style")
                .doesNotContainPattern("\\son\\w+=")
                .doesNotContainPattern("\\sstyle=");
        assertThat(html).doesNotContainPattern("(src|href)=\"(https?:)?//");
    }

    /** A name that resolves to this machine: the page of its owner must not get in. */
    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example", "evil.example:PORT", "127.0.0.1", "127.0.0.1:1", "localhost.evil.example:PORT"})
    void anotherHostIsForbidden(String host) throws IOException {
        assertThat(raw("GET /api/page HTTP/1.1", host.replace("PORT", String.valueOf(served.port()))))
                .startsWith("HTTP/1.1 403")
                .doesNotContain("Kestrel");
        assertThat(raw("GET / HTTP/1.1", host.replace("PORT", String.valueOf(served.port()))))
                .startsWith("HTTP/1.1 403");
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:PORT", "localhost:PORT"})
    void itsOwnHostIsServed(String host) throws IOException {
        assertThat(raw("GET /api/page HTTP/1.1", host.replace("PORT", String.valueOf(served.port()))))
                .startsWith("HTTP/1.1 200")
                .contains("Kestrel");
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "null", "https://127.0.0.1:PORT", "http://127.0.0.1", "file://"})
    void anotherOriginIsForbidden(String origin) {
        String sent = origin.replace("PORT", String.valueOf(served.port()));
        String before = Cars.read(file);
        HttpResponse<String> answer = served.post(
                "/api/edit",
                Served.edit(served.revision(), "pedal.free_play", "1 mm"),
                "Content-Type",
                "application/json",
                "Origin",
                sent);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(file).hasContent(before);
        assertThat(served.get("/api/page", "Origin", sent).statusCode()).isEqualTo(403);
        nothingIsShared(answer);
    }

    @Test
    void itsOwnOriginIsServed() {
        assertThat(served.get("/api/page", "Origin", "http://127.0.0.1:" + served.port())
                        .statusCode())
                .isEqualTo(200);
    }

    /** What a form of a foreign page can send without asking first. */
    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"})
    void whatAFormSendsIsRefused(String type) {
        String before = Cars.read(file);
        String body = Served.edit(served.revision(), "pedal.free_play", "1 mm");
        assertThat(served.post("/api/edit", body, "Content-Type", type).statusCode())
                .isEqualTo(415);
        assertThat(file).hasContent(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nothing",
                "/api",
                "/api/edit",
                "/car.yaml",
                "/assets/",
                "/assets/../../car.yaml",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/..%2f..%2fetc%2fpasswd",
                "//etc/passwd",
                "/org/brakewright/app/Main.class"
            })
    void whatIsNotThereIsNotFoundAndNothingLeaks(String path) throws IOException {
        String answer = raw("GET " + path + " HTTP/1.1", "127.0.0.1:" + served.port());
        assertThat(answer).startsWith("HTTP/1.1 40");
        assertThat(answer)
                .doesNotContainIgnoringCase("javalin")
                .doesNotContainIgnoringCase("jetty")
                .doesNotContain("root:", "Exception", "org.brakewright", "wheelbase", folder.toString());
    }

    private static void nothingIsShared(HttpResponse<String> answer) {
        assertThat(answer.headers().map().keySet())
                .noneMatch(name -> name.toLowerCase(java.util.Locale.ROOT).startsWith("access-control-"));
    }

    /** Java's own client does not let a test write Host and dots as it likes. */
    private static String raw(String request, String host) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.port())) {
            socket.getOutputStream()
                    .write((request + "\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
