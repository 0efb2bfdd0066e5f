package org.brakewright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.app.Cars;
import org.brakewright.app.web.PageServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page on screens of both sizes and colours: nothing runs off the side, and axe-core finds no barrier. */
@SuppressWarnings("NullAway.Init") // JUnit sets them up
class LookTest {
    private static final Path AXE = Path.of("..", "..", "ui", "node_modules", "axe-core", "axe.min.js");
    private static final String VIOLATIONS =
            "async () => (await axe.run()).violations.flatMap(v => v.nodes.map(n => v.id + ' at ' + n.target.join(' ')))";
    private static final String WIDER_THAN_THE_SCREEN =
            "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";

    @TempDir
    private static Path folder;

    private static PageServer server;
    private static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        server = Bench.serve(Bench.car(folder));
        chromium = new Chromium();
    }

    @AfterAll
    static void stop() {
        chromium.close();
        server.close();
    }

    static Stream<Bench.Screen> screens() {
        return Stream.of(ColorScheme.LIGHT, ColorScheme.DARK)
                .flatMap(colours -> Stream.of(Bench.Screen.DESKTOP, Bench.Screen.PHONE)
                        .map(size -> new Bench.Screen(size.width(), size.height(), colours)));
    }

    @ParameterizedTest
    @MethodSource("screens")
    void axeFindsNoBarrier(Bench.Screen screen) {
        try (Bench bench = open(screen)) {
            bench.page().evaluate(Cars.read(AXE));
            bench.openEverything();
            bench.field("pedal.free_play").fill("3 kg");
            bench.field("pedal.free_play").press("Enter");
            bench.at(".refusal").waitFor();
            assertThat(violations(bench))
                    .as("everything unfolded, one value refused")
                    .isEmpty();
            bench.at("#headline button").first().click();
            bench.at("dialog[open]").waitFor();
            assertThat(violations(bench)).as("with a working open").isEmpty();
        }
    }

    @Test
    void aPhoneNeedsNoSidewaysScrolling() {
        try (Bench bench = open(Bench.Screen.PHONE)) {
            assertThat(bench.page().evaluate(WIDER_THAN_THE_SCREEN)).isEqualTo(0);
            bench.openEverything();
            assertThat(bench.page().evaluate(WIDER_THAN_THE_SCREEN)).isEqualTo(0);
        }
    }

    private static Bench open(Bench.Screen screen) {
        return new Bench(chromium.browser(), server.address(), screen);
    }

    private static List<?> violations(Bench bench) {
        return (List<?>) bench.page().evaluate(VIOLATIONS);
    }
}
